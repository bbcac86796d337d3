package keenward.core.rehearsal;

import java.util.Random;
import keenward.core.plan.ArmingMode;

/** Inputs of every kind at random, a few of which name things outside the system. */
public final class RandomInputs {

  private static final ArmingMode[] MODES = ArmingMode.values();
  private static final int[] SPANS = {0, 1, 10, 50, 100, 299, 300, 301, 600, 1200, 2400, 3000};

  private final SystemModel model;
  private final Random random;

  /** Random inputs for a system. */
  public RandomInputs(SystemModel model, Random random) {
    this.model = model;
    this.random = random;
  }

  /** The next input. */
  public Input next() {
    int kind = random.nextInt(100);
    if (kind < 30) {
      return new Input.Advance(SPANS[random.nextInt(SPANS.length)]);
    }
    if (kind < 45) {
      return new Input.ZoneOpened(zone());
    }
    if (kind < 57) {
      return new Input.ZoneClosed(zone());
    }
    return switch (kind) {
      case 57, 58 -> new Input.LidOpened(zone());
      case 59, 60 -> new Input.LidShut(zone());
      case 61 -> new Input.RadioLost(zone());
      case 62 -> new Input.RadioHeard(zone());
      case 63 -> new Input.Cell(zone(), random.nextBoolean());
      case 64, 65, 66, 67 -> new Input.Code(user(), keypad());
      case 68, 69, 70 -> new Input.WrongCode(keypad());
      case 71, 72, 73, 74, 75, 76, 77, 78 ->
          new Input.Arm(
              user(), keypad(), partition(), MODES[random.nextInt(3)], random.nextInt(3) == 0);
      case 79, 80, 81, 82 -> new Input.Disarm(user(), keypad(), partition());
      case 83, 84, 85 -> new Input.Bypass(user(), keypad(), zone());
      case 86 -> new Input.EndBypass(user(), keypad(), zone());
      case 87 -> new Input.Isolate(user(), zone(), random.nextBoolean());
      case 88, 89 -> new Input.Reset(user(), keypad());
      case 90 -> new Input.PostponeArming(user(), keypad(), random.nextInt(40_000));
      case 91 -> new Input.ClockSet(random.nextInt(72_000) - 36_000);
      case 92, 93 -> new Input.Mains(random.nextBoolean());
      case 94, 95 -> new Input.Battery(random.nextBoolean());
      case 96 -> new Input.Programming(random.nextInt(3) == 0);
      case 97 -> new Input.Restart();
      default -> new Input.Advance(random.nextInt(2_000_000));
    };
  }

  private int zone() {
    return random.nextInt(200) == 0 ? model.zones().size() : random.nextInt(model.zones().size());
  }

  private int user() {
    return random.nextInt(200) == 0 ? -1 : random.nextInt(model.users().size());
  }

  private int keypad() {
    return random.nextInt(model.keypads().size() + 1) - 1;
  }

  private int partition() {
    return random.nextInt(model.partitions().size() + 1) - 1;
  }
}
