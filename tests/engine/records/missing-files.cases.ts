/** Where a file of the tiny folder is put instead; nowhere when it is taken out. */
export type Put = (path: string) => string | undefined;
/** Pieces of texts put in place of others, two by two, before anything is moved. */
export type Written = Readonly<Record<string, readonly string[]>>;

const from =
  (old: string, other: string): Put =>
  (path) =>
    path.startsWith(old) ? other + path.slice(old.length) : path;
const without =
  (old: string): Put =>
  (path) =>
    path.startsWith(old) ? undefined : path;

// what was done to the folder, what is written otherwise besides, everything that is said
export const SLIPS: [string, Put, Written, ...said: string[]][] = [
  [
    "a folder of systems under another name",
    from("components/", "component/"),
    {},
    "error component/: the folder is not read, and seems to be components/: 2 files lie in it, such as component/frame.yaml. 12 complaints that only follow from this are not shown → call it components/",
  ],
  [
    "a folder of records under another name",
    from("changes/", "change/"),
    {},
    "error change/: the folder is not read, and seems to be changes/: 2 files lie in it, such as change/1958/FR58-01.md. 4 complaints that only follow from this are not shown → call it changes/",
  ],
  [
    "a folder in capitals",
    from("changes/", "Changes/"),
    {},
    "error Changes/: the folder is not read, and seems to be changes/: 2 files lie in it, such as Changes/1958/FR58-01.md. 4 complaints that only follow from this are not shown → call it changes/",
  ],
  [
    "a folder of parts under another name",
    from("parts/", "part/"),
    {},
    "error part/: the folder is not read, and seems to be parts/: 2 files lie in it, such as part/gasket.yaml. 18 complaints that only follow from this are not shown → call it parts/",
  ],
  [
    "the vehicles under another name: that the traits are missing is said by that",
    from("vehicles/", "vehicle/"),
    {},
    "error vehicle/: the folder is not read, and seems to be vehicles/: 5 files lie in it, such as vehicle/all.yaml → call it vehicles/",
  ],
  [
    "one file of a folder under a wrong name, beside the right folder",
    from("parts/pump", "part/pump"),
    {},
    "error part/pump.yaml: it is not read here, and seems to be the parts of a component. 12 complaints that only follow from this are not shown → move it to parts/pump.yaml",
  ],
  [
    "some files of a folder under a wrong name, beside the right folder",
    (path) => path.replace(/^vehicles\/(badger|heron)/, "vehicle/$1"),
    {},
    "error vehicle/: the folder is not read, and seems to be vehicles/: 2 files lie in it, such as vehicle/badger.yaml → move its files to vehicles/",
  ],
  [
    "the traits under another name, which is that of a line",
    from("vehicles/traits", "vehicles/trait"),
    {},
    "error vehicles/trait.yaml: it is read as the file of a model line, and seems to be the file of the traits. 1 complaint that only follows from this is not shown → call it vehicles/traits.yaml",
  ],
  [
    "the traits beside the folders",
    from("vehicles/traits", "traits"),
    {},
    "error traits.yaml: it is not read here, and seems to be the file of the traits → move it to vehicles/traits.yaml",
  ],
  [
    "the plates under another name",
    from("vehicles/plates", "vehicles/plate"),
    {},
    "error vehicles/plate.yaml: it is read as the file of a model line, and seems to be the file of the plates. 1 complaint that only follows from this is not shown → call it vehicles/plates.yaml",
  ],
  [
    "a line among the parts",
    from("vehicles/badger", "parts/badger"),
    {},
    "error parts/badger.yaml: it is read as the parts of a component, and seems to be the file of a model line. 8 complaints that only follow from this are not shown → move it to vehicles/badger.yaml",
  ],
  [
    "a line beside the folders: nothing names it, but the traits have it and no other file is about it",
    from("vehicles/badger", "badger"),
    {},
    "error badger.yaml: it is not read here, and seems to be the file of a model line → move it to vehicles/badger.yaml",
  ],
  [
    "another ending of a file that lies alone",
    from("words.yaml", "words.yml"),
    {},
    "error words.yml: it is not read here, and seems to be the file of the words → call it words.yaml",
  ],
  [
    "a slip in the name of a file that lies alone",
    from("maker", "makre"),
    {},
    "error makre.yaml: it is not read here, and seems to be the file about the maker → call it maker.yaml",
  ],
  [
    "a file that lies alone, in a folder",
    from("moved", "settings/moved"),
    {},
    "error settings/moved.yaml: it is not read here, and seems to be the file of the ids that moved → move it to moved.yaml",
  ],
  [
    "a record among the parts",
    from("changes/1959/", "parts/"),
    {},
    "error parts/HY59-01.md: it is not read here, and seems to be a change record. 4 complaints that only follow from this are not shown → move it to changes/<year>/HY59-01.md",
  ],
  [
    "a record that nothing names among the parts",
    from("changes/1958/", "parts/"),
    { "changes/1959/HY59-01.md": ["links: [FR58-01]\ncancels:\n  - { record: FR58-01, scope: line=B }\n", ""] },
    "error parts/FR58-01.md: it is not read here, and seems to be a change record → move it to changes/<year>/FR58-01.md",
  ],
  [
    "a record that others name, somewhere else: perhaps it was not to be read, so one of them is shown",
    from("changes/1959/", "drafts/"),
    {},
    "error drafts/HY59-01.md: it is not read here, and seems to be a change record. 4 complaints that only follow from this are not shown → move it to changes/<year>/HY59-01.md, or take out what names it",
    "  also parts/pump.yaml:3:91 no change record is called 'HY59-01'",
  ],
  [
    "a record with the ending of a text",
    from("changes/1959/HY59-01.md", "changes/1959/HY59-01.txt"),
    {},
    "error changes/1959/HY59-01.txt: it is not read here, and seems to be a change record. 4 complaints that only follow from this are not shown → call it changes/1959/HY59-01.md",
  ],
  [
    "all records with an ending in capitals",
    (path) => path.replace(/^(changes\/.*)\.md$/, "$1.MD"),
    {},
    "error changes/1958/FR58-01.MD: it is not read here, and seems to be a change record; so it is with 1 more file in changes/. 4 complaints that only follow from this are not shown → call it changes/1958/FR58-01.md, and the others likewise",
  ],
  [
    "parts with two endings",
    from("parts/pump.yaml", "parts/pump.yaml.txt"),
    {},
    "error parts/pump.yaml.txt: it is not read here, and seems to be the parts of a component. 12 complaints that only follow from this are not shown → call it parts/pump.yaml",
  ],
  [
    "parts one folder too deep",
    from("parts/pump", "parts/deep/pump"),
    {},
    "error parts/deep/pump.yaml: it is not read here, and seems to be the parts of a component. 12 complaints that only follow from this are not shown → call it parts/pump.yaml, or take out what names it",
    "  also changes/1959/HY59-01.md:10:26 no part is called 'HT-101'",
  ],
  [
    "a system among the parts",
    from("components/hydraulics", "parts/hydraulics"),
    {},
    "error parts/hydraulics.yaml: it is read as the parts of a component, and seems to be a system with its components. 18 complaints that only follow from this are not shown → move it to components/hydraulics.yaml",
  ],
  [
    "records among the bulletins",
    (path) => path.replace(/^changes\/\d+\//, "bulletins/"),
    {},
    "error bulletins/FR58-01.md: it is read as a bulletin, and seems to be a change record; so it is with 1 more file in bulletins/. 26 complaints that only follow from this are not shown → move it to changes/<year>/FR58-01.md, and the others likewise",
  ],
  [
    "a bulletin among the records",
    from("bulletins/", "changes/1959/"),
    {},
    "error changes/1959/TB-1.md: it is read as a change record, and seems to be a bulletin. 4 complaints that only follow from this are not shown → move it to bulletins/TB-1.md",
  ],
  [
    "records beside the folders",
    (path) => path.replace(/^changes\/\d+\//, ""),
    {},
    "error FR58-01.md: it is not read here, and seems to be a change record; so it is with 1 more file in the data folder. 4 complaints that only follow from this are not shown → move it to changes/<year>/FR58-01.md, and the others likewise, or take out what names it",
    "  also parts/pump.yaml:3:91 no change record is called 'HY59-01'",
  ],
  [
    "records in a folder of quite another name, some of which only each other name",
    from("changes/", "records/"),
    {},
    "error records/1958/FR58-01.md: it is not read here, and seems to be a change record; so it is with 1 more file in records/. 4 complaints that only follow from this are not shown → move it to changes/<year>/FR58-01.md, and the others likewise, or take out what names it",
    "  also parts/pump.yaml:3:91 no change record is called 'HY59-01'",
  ],
  [
    "no systems",
    without("components/"),
    {},
    "error components/: the folder is missing, or holds nothing that is read, so what others name of it is not known. 12 complaints that only follow from this are not shown → each file components/<id>.yaml holds a system with its components; move them there from where they are, or write them",
    "  also parts/gasket.yaml:1:12 no component is called 'gasket'",
  ],
  [
    "no parts",
    without("parts/"),
    {},
    "error parts/: the folder is missing, or holds nothing that is read, so what others name of it is not known. 18 complaints that only follow from this are not shown → each file parts/<component>.yaml holds the parts of a component; move them there from where they are, or write them",
    "  also changes/1959/HY59-01.md:18:102 no part is called 'HT-201'",
  ],
  [
    "no parts, one of which is only cited",
    without("parts/"),
    { "bulletins/TB-1.md": ["[[pump]]", "[[pump]] and [[HT-555]]"] },
    "error parts/: the folder is missing, or holds nothing that is read, so what others name of it is not known. 19 complaints that only follow from this are not shown → each file parts/<component>.yaml holds the parts of a component; move them there from where they are, or write them",
    "  also changes/1959/HY59-01.md:18:102 no part is called 'HT-201'",
  ],
  [
    "no parts, and a line in their folder",
    (path) => (path === "vehicles/badger.yaml" ? "parts/badger.yaml" : without("parts/")(path)),
    {},
    "error parts/: the folder is missing, or holds nothing that is read, so what others name of it is not known. 18 complaints that only follow from this are not shown → each file parts/<component>.yaml holds the parts of a component; move them there from where they are, or write them",
    "  also changes/1959/HY59-01.md:18:102 no part is called 'HT-201'",
    "error parts/badger.yaml: it is read as the parts of a component, and seems to be the file of a model line. 8 complaints that only follow from this are not shown → move it to vehicles/badger.yaml",
  ],
  [
    "the whole folder one folder deeper",
    (path) => `mine/${path}`,
    {},
    "error mine/: nothing is read, as the data folder seems to be this one → take it as the data folder, or move what lies in mine/ one folder up",
  ],
];

// the same for what must be said all the same
export const SAID_ALL_THE_SAME: [string, Put, Written, ...said: string[]][] = [
  [
    "a name that stands in none of the files that are not read",
    from("parts/", "part/"),
    { "changes/1959/HY59-01.md": ["service-only: [HT-201]", "service-only: [HT-20]"] },
    "error part/: the folder is not read, and seems to be parts/: 2 files lie in it, such as part/gasket.yaml. 17 complaints that only follow from this are not shown → call it parts/",
    "error changes/1959/HY59-01.md service-only.0: no part is called 'HT-20' → add it to parts/, or mend the name",
  ],
  [
    "a name of another kind, an id and a scope",
    from("changes/", "change/"),
    {
      "parts/gasket.yaml": ["component: gasket", "component: gaskte"],
      "bulletins/TB-1.md": ["id: TB-1", "id: TB-2"],
      "vehicles/heron.yaml": ["optional: plant=D", "optional: plant=Q"],
    },
    "error change/: the folder is not read, and seems to be changes/: 2 files lie in it, such as change/1958/FR58-01.md. 4 complaints that only follow from this are not shown → call it changes/",
    "error bulletins/TB-1.md id: bulletin 'TB-2' lies in bulletins/TB-1.md → call the file bulletins/TB-2.md",
    "error parts/gasket.yaml component: no component is called 'gaskte' → did you mean 'gasket'?",
    "error vehicles/heron.yaml equipment.WN.optional: plant has no value 'Q' → values are K, D",
  ],
  [
    "what is cited and near to a name that is known, while the parts are missing",
    without("parts/"),
    { "bulletins/TB-1.md": ["[[HY59-01]]", "[[HY59-1]]"] },
    "error parts/: the folder is missing, or holds nothing that is read, so what others name of it is not known. 18 complaints that only follow from this are not shown → each file parts/<component>.yaml holds the parts of a component; move them there from where they are, or write them",
    "  also changes/1959/HY59-01.md:18:102 no part is called 'HT-201'",
    "error bulletins/TB-1.md text: it cites 'HY59-1', which is no record, part or component → did you mean 'HY59-01'?",
  ],
  [
    "a few unknown names where a folder is missing",
    without("changes/"),
    {},
    "error moved.yaml moved.0.to: no record is called 'HY59-01' → add it to the data, or leave 'to' out, or mend the name",
    "error parts/pump.yaml features.0.record: no change record is called 'HY59-01' → add it to changes/, or mend the name",
    "error parts/pump.yaml features.1.record: no change record is called 'HY59-01' → add it to changes/, or mend the name",
    "error sums.yaml sums.0.record: no change record is called 'HY59-01' → add it to changes/, or mend the name",
  ],
  [
    "an unknown name where every folder is in order",
    (path) => path,
    { "changes/1959/HY59-01.md": ["service-only: [HT-201]", "service-only: [HT-210]"] },
    "error changes/1959/HY59-01.md service-only.0: no part is called 'HT-210' → did you mean 'HT-201'?",
  ],
];

// a file that is put beside the others, its text, what is said, if anything
export const ON_PURPOSE: [string, string, string, ...said: string[]][] = [
  [
    "a draft that nothing names",
    "drafts/HY60-01.md",
    "---\nid: HY60-01\ntitle: x\nissued: 1959-09-01\nkinds: [part]\nstarts: x\nscope: all\n---\nx\n",
    "warning drafts/HY60-01.md: no kind of file lies here, so it is not read → did you mean changes/<year>/HY60-01.md?",
  ],
  [
    "notes",
    "NOTES.md",
    "for ourselves",
    "warning NOTES.md: no kind of file lies here, so it is not read → move it to vehicles/, components/, parts/, changes/<year>/ or bulletins/",
  ],
  [
    "notes among the parts",
    "parts/NOTES.md",
    "for ourselves",
    "warning parts/NOTES.md: no kind of file lies here, so it is not read → move it to vehicles/, components/, parts/, changes/<year>/ or bulletins/",
  ],
  [
    "a copy in a folder under a wrong name",
    "parst/pump.yaml",
    "component: pump\nparts: []\n",
    "warning parst/pump.yaml: no kind of file lies here, so it is not read → did you mean parts/pump.yaml?",
  ],
  [
    "a copy of a record in a folder under a wrong name",
    "change/HY59-01.md",
    "---\nid: HY59-01\ntitle: x\nissued: 1959-09-01\nkinds: [part]\nstarts: x\nscope: all\n---\nx\n",
    "warning change/HY59-01.md: no kind of file lies here, so it is not read → did you mean changes/HY59-01.md?",
  ],
  ["a copy by an editor", "parts/pump.yaml~", "component: pump\nparts: []\n"],
  ["a copy under another name", "parts/pump-old.txt", "component: pump\nparts: []\n"],
  ["a copy of what is gone", "parts/lift.yaml.bak", "component: lift\nparts: []\n"],
  ["what an editor saves by itself", "parts/#lift.yaml#", "component: lift\nparts: []\n"],
  ["a copy of a line", "vehicles/badger-old.txt", "line: B\nbuilt: [all]\n"],
  [
    "a line of which the traits know nothing",
    "next/otter.yaml",
    "line: O\nbuilt: [all]\n",
    "warning next/otter.yaml: no kind of file lies here, so it is not read → did you mean vehicles/otter.yaml?",
  ],
  ["a picture", "parts/pump.jpg", "component: lift\nparts: []\n"],
  ["a hidden file", "parts/.lift.yaml", "component: lift\nparts: []\n"],
];
