/** Turn of a square lamp's sides, radians from right toward up, 0 to π/2; null for a round lamp. */
export type LampTurn = number | null;
