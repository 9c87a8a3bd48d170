/** Something the person who called can put right: told in one line, exit code 2. */
export class BadCall extends Error {}
