declare namespace App {
  interface Locals {
    /** The guide page being built: its steps look up their numbers and links here. */
    guidePage?: import('./lookup.ts').GuidePage;
    /** Titles of the cause pages, for the verdicts on it. */
    causeTitles?: Readonly<Record<string, string>>;
  }
}
