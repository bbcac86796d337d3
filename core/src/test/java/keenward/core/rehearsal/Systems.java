package keenward.core.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.ZoneResponse;

/** Invented systems for tests. */
public final class Systems {

  private static final int SECOND = 10;

  private Systems() {}

  /**
   * The test system of the behaviour cases: partitions A and B share C; entry route D1 30 s, D2 90
   * s; exit 60 s; abort window 30 s; sounder 240 s.
   */
  public static SystemModel ofTheCases() {
    List<PartitionModel> partitions =
        List.of(
            PartitionModel.of(1, "A"),
            PartitionModel.of(2, "B"),
            PartitionModel.common(3, "C", 0, 1));
    List<ZoneModel> zones =
        List.of(
            burglary(1, "D1", ZoneResponse.ENTRY_EXIT, 134)
                .delayed(EntryDelays.always(30 * SECOND))
                .with(ZoneTrait.CHIME),
            burglary(2, "D2", ZoneResponse.ENTRY_EXIT, 134)
                .delayed(EntryDelays.always(90 * SECOND)),
            burglary(3, "motion", ZoneResponse.FOLLOWER, 132),
            burglary(4, "bound", ZoneResponse.FOLLOWER, 132).releasedBy(0),
            burglary(5, "window", ZoneResponse.PERIMETER, 131).with(ZoneTrait.FORCEABLE),
            burglary(6, "hatch", ZoneResponse.PERIMETER, 131).without(ZoneTrait.BYPASSABLE),
            burglary(7, "landing", ZoneResponse.FOLLOWER, 132)
                .liveIn(ArmingMode.AWAY, ArmingMode.NIGHT),
            burglary(8, "safe", ZoneResponse.TWENTY_FOUR_HOUR, 133),
            ZoneModel.of(9, "counter", ZoneResponse.HOLD_UP, 122)
                .with(ZoneTrait.SILENT)
                .held(2 * SECOND),
            ZoneModel.of(10, "till", ZoneResponse.HOLD_UP, 123),
            ZoneModel.of(11, "pendant", ZoneResponse.MEDICAL, 101),
            ZoneModel.of(12, "smoke", ZoneResponse.FIRE, 111).with(ZoneTrait.LATCHING),
            ZoneModel.of(13, "smoke 2", ZoneResponse.FIRE, 111).with(ZoneTrait.LATCHING),
            ZoneModel.of(14, "call point", ZoneResponse.FIRE, 115),
            ZoneModel.of(15, "gas", ZoneResponse.CARBON_MONOXIDE, 162),
            ZoneModel.of(16, "cold store", ZoneResponse.TECHNICAL, 158),
            ZoneModel.of(17, "box", ZoneResponse.TAMPER, 137),
            ZoneModel.of(18, "key", ZoneResponse.KEY_SWITCH, 130),
            burglary(19, "P1", ZoneResponse.INSTANT, 132),
            burglary(20, "P2", ZoneResponse.INSTANT, 132),
            burglary(21, "swinger", ZoneResponse.INSTANT, 130).swingerLimit(2),
            burglary(22, "stay door", ZoneResponse.ENTRY_EXIT, 134)
                .delayed(new EntryDelays(30 * SECOND, 0, 0)),
            burglary(23, "bedroom", ZoneResponse.FOLLOWER, 132)
                .liveIn(ArmingMode.AWAY, ArmingMode.NIGHT)
                .delayed(new EntryDelays(0, 0, 30 * SECOND)),
            burglary(24, "verified", ZoneResponse.FIRE, 111).with(ZoneTrait.VERIFIED),
            burglary(25, "verified 2", ZoneResponse.FIRE, 111).with(ZoneTrait.VERIFIED),
            burglary(26, "radio window", ZoneResponse.PERIMETER, 131).with(ZoneTrait.RADIO),
            burglary(27, "B door", ZoneResponse.ENTRY_EXIT, 134)
                .delayed(EntryDelays.always(30 * SECOND))
                .inPartition(1),
            burglary(28, "hall door", ZoneResponse.ENTRY_EXIT, 134)
                .delayed(EntryDelays.always(30 * SECOND))
                .inPartition(2),
            burglary(29, "quiet window", ZoneResponse.PERIMETER, 146).with(ZoneTrait.SILENT));
    Set<Integer> onlyA = Set.of(0);
    List<UserModel> users =
        List.of(
            UserModel.of(1, "Ann", 0),
            UserModel.of(2, "Ben", 1),
            UserModel.of(3, "Chris", 0, 1),
            new UserModel(4, "Dora", onlyA, Set.of(), false, false, false),
            new UserModel(5, "Threat", onlyA, onlyA, false, true, false),
            new UserModel(6, "Tec", Set.of(), Set.of(), false, false, true));
    List<KeypadModel> keypads =
        List.of(
            new KeypadModel("KA", KeypadModel.Kind.KEYPAD, Set.of(0)),
            new KeypadModel("KB", KeypadModel.Kind.KEYPAD, Set.of(1)),
            new KeypadModel("KC", KeypadModel.Kind.KEYPAD, Set.of(0, 1, 2)),
            new KeypadModel("fob", KeypadModel.Kind.FOB, Set.of(0)),
            new KeypadModel("app", KeypadModel.Kind.REMOTE, Set.of(0, 1)));
    return new SystemModel(
        partitions,
        zones,
        users,
        keypads,
        List.of(new CrossGroup(List.of(18, 19), 60 * SECOND)),
        Timings.standard().with(TimingSetting.SOUNDER_TIME, 240 * SECOND),
        RehearsalOptions.standard());
  }

  private static ZoneModel burglary(int number, String name, ZoneResponse response, int event) {
    return ZoneModel.of(number, name, response, event)
        .with(ZoneTrait.BYPASSABLE)
        .with(ZoneTrait.ABORTABLE);
  }

  /** The same system in which A arms by itself at 22:00. */
  public static SystemModel armingByItself() {
    SystemModel model = ofTheCases();
    List<PartitionModel> partitions = new ArrayList<>(model.partitions());
    partitions.set(0, new PartitionModel(1, "A", List.of(), 22 * 3600 * SECOND));
    return new SystemModel(
        partitions,
        model.zones(),
        model.users(),
        model.keypads(),
        model.crossGroups(),
        model.timings(),
        model.options());
  }

  /** A random choice of every option, and of some numbers. */
  public static SystemModel varied(SystemModel model, Random random) {
    RehearsalOptions options = model.options();
    for (Option option : Option.values()) {
      options = options.with(option, random.nextBoolean());
    }
    Timings timings = model.timings();
    int[] windows = {0, 150, 300, 450};
    timings =
        timings
            .with(TimingSetting.ABORT_WINDOW, windows[random.nextInt(windows.length)])
            .with(TimingSetting.EXIT_TIME, random.nextInt(3) * 300)
            .with(TimingSetting.SOUNDER_TIME, 900 + random.nextInt(2000))
            .with(TimingSetting.START_UP_TIME, random.nextInt(2) * 600)
            .with(TimingSetting.WRONG_CODE_LIMIT, random.nextInt(4))
            .with(TimingSetting.MAINS_REPORT_DELAY, random.nextInt(2) * 36_000);
    return model.with(options).with(timings);
  }
}
