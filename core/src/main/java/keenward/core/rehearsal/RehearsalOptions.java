package keenward.core.rehearsal;

/** The choices that a system makes, one for each {@link Option}. */
public record RehearsalOptions(long chosen) {

  /** Every option at its stated default. */
  public static RehearsalOptions standard() {
    RehearsalOptions options = new RehearsalOptions(0);
    for (Option option : Option.values()) {
      options = options.with(option, option.standard());
    }
    return options;
  }

  /** Whether an option is chosen. */
  public boolean has(Option option) {
    return Bits.has(chosen, option.slot());
  }

  /** The same choices but for one. */
  public RehearsalOptions with(Option option, boolean yes) {
    long bit = 1L << option.slot();
    return new RehearsalOptions(yes ? chosen | bit : chosen & ~bit);
  }
}
