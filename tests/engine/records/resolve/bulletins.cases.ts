/** Slips in bulletins. */
// file, what stands there, what is written instead, everything that is said: "file field: message → hint"
export const BULLETINS_SLIPS: [file: string, old: string, replacement: string, ...said: string[]][] = [
  [
    "bulletins/TB-1.md",
    "id: TB-1",
    "id: TB-2",
    "bulletins/TB-1.md id: bulletin 'TB-2' lies in bulletins/TB-1.md → call the file bulletins/TB-2.md",
  ],
  [
    "bulletins/TB-1.md",
    "[[pump]]",
    "[[pmup]] and [[ HY59-99 | old ]]",
    "bulletins/TB-1.md text: it cites 'pmup', which is no record, part or component → did you mean 'pump'?",
    "bulletins/TB-1.md text: it cites 'HY59-99', which is no record, part or component → mend the id, or add the record",
  ],
  [
    "bulletins/TB-1.md",
    "[[pump]]",
    "[[../../etc/passwd]]",
    "bulletins/TB-1.md text: it cites '../../etc/passwd', which is no record, part or component → mend the id, or add the record",
  ],
];
