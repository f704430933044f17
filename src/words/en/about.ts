/** What this is, who it is for, and what it cannot do. */
export interface AboutSection {
  title: string;
  text: readonly string[];
}

export interface AboutPage {
  title: string;
  lede: string;
  sections: readonly AboutSection[];
}

export const about: AboutPage = {
  title: 'About Faultwright',
  lede: 'A field guide for people who install off-grid 48 V systems and are called back when one misbehaves.',
  sections: [
    {
      title: 'Who it is for',
      text: [
        'You know the trade. You work alone on a wall in an outbuilding, a meter in one hand and a phone in the other, and there is no signal.',
        'You may be teaching a helper. Then read each plate aloud before anything is touched.',
        'It is not for owners without training. If you are the owner, read the record of the visit and call the person who made it.',
      ],
    },
    {
      title: 'How it decides',
      text: [
        'Enter the facts of the install once, on the site sheet. From them it works out what the meter should show at each test point on this site, and shows the working.',
        'You type what the meter does show, with its sign. The reading is judged against that band with the meter’s own uncertainty. A reading too near a limit to call is undetermined. It is never passed in silence. Where safety hangs on it, it counts as not safe.',
        'A verdict names the readings it rests on, the remedy, and the test that would have failed before. Causes that read the same stay together until a check splits them.',
      ],
    },
    {
      title: 'How it keeps you safe',
      text: [
        'Each hazard stands before the action, on the step it belongs to. A hold point opens only when each item is met: a number by a recorded reading, the rest by its own confirmation.',
        'Every step has a way out: “I can’t do this” and “not sure” lead to a safe end.',
        'The rules of safe work are checked by a program over every path through every guide, on every kind of plant it knows. That proves the text, not your site. On site the reading decides.',
      ],
    },
    {
      title: 'What it keeps, and where',
      text: [
        'Sites and visits are stored on this phone only. There is no account and no tracking, and nothing is sent anywhere. Export a visit to a file before you clear the browser or change phones.',
        'Once opened, it works with no network.',
      ],
    },
    {
      title: 'Where its numbers come from',
      text: [
        'Each limit names its published source. A rule of thumb with none is marked common practice. A value recalled and not looked up is marked from memory.',
        'The demo sites are invented. No make or model is named anywhere.',
      ],
    },
  ],
};

export const aboutLimits: AboutPage = {
  title: 'What this cannot do',
  lede: 'Read this once before the first visit.',
  sections: [
    {
      title: 'It does not make you qualified',
      text: [
        'It is an aid for people qualified to do this work where they are. Local codes, the equipment’s own instructions and a licensed electrician come first. Where it and they differ, they are right.',
      ],
    },
    {
      title: 'It cannot see your site',
      text: [
        'It knows what you typed and nothing else. A wrong sheet gives a wrong band. A lead in the wrong jack gives a wrong reading. Prove the meter on a known source before and after each dead test.',
        'It judges against a model of the plant. An install that is wired in a way the drawing does not show is outside that model. Stop, and work from the equipment’s own documents.',
      ],
    },
    {
      title: 'Below 60 V is not safe',
      text: [
        'A 48 V bank can deliver thousands of amperes. A dropped spanner burns as badly as a high-voltage arc. PV strings stand at several hundred volts in any light, and no switch makes the array side dead.',
      ],
    },
    {
      title: 'Some work is not for one person',
      text: [
        'Lifting heavy packs, bare battery posts, roofs. Where a step needs a second person or someone named who will come looking, it says so and waits.',
      ],
    },
    {
      title: 'Not sure?',
      text: ['Stop. Leave it isolated, locked and tagged. Tell the owner what is live. Come back with help.'],
    },
  ],
};
