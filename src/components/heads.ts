import { getCollection } from 'astro:content';

/** The heads of every guide and procedure, by `folder/id`. */
export async function headsByWay() {
  const lists = await Promise.all(
    (['guides', 'procedures'] as const).map(async (folder) =>
      (await getCollection(folder)).map(({ id, data }) => [`${folder}/${id}` as string, data] as const),
    ),
  );
  return new Map(lists.flat());
}
