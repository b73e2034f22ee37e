/** The numbers of the rules in the project's list; each has its row in the table. */
export const RULE_NUMBERS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16] as const;
export type RuleNumber = (typeof RULE_NUMBERS)[number];
