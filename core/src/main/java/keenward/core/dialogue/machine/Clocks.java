package keenward.core.dialogue.machine;

/**
 * The clocks of a state, in tenths of a second. Each stands still where nothing depends on it.
 *
 * @param idle time since the last key while programming is open, or while a letter is being tapped
 * @param onScreen time towards the screen's own deadline
 * @param busy time until the next key is heard
 * @param deaf time until the panel has restarted
 * @param keypadsRestart time until the slowest keypad is back
 * @param sincePower time since power came back, up to just beyond the longest window
 */
public record Clocks(
    int idle, int onScreen, int busy, int deaf, int keypadsRestart, int sincePower) {}
