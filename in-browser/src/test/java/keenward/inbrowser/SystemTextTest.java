package keenward.inbrowser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.CrossGroup;
import keenward.core.rehearsal.EntryDelays;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.Option;
import keenward.core.rehearsal.PartitionModel;
import keenward.core.rehearsal.RehearsalOptions;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.TimingSetting;
import keenward.core.rehearsal.Timings;
import keenward.core.rehearsal.UserModel;
import keenward.core.rehearsal.ZoneModel;
import keenward.core.rehearsal.ZoneTrait;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SystemTextTest {

  private static final String[] NAMES = {
    "Hall", "", "Büro 2, \"left\"", "a\tb", "a\nb", "\\t\\", "鍵"
  };

  @Test
  void everySystemComesBackAsItWas() {
    for (long seed = 0; seed < 300; seed++) {
      SystemModel model = randomSystem(new Random(seed));
      String text = SystemText.write(model);

      assertThat(SystemText.read(text)).as("seed " + seed).isEqualTo(model);
      assertThat(SystemText.write(SystemText.read(text))).as("seed " + seed).isEqualTo(text);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "attic\t1",
        "partition\t1\tHall\t",
        "partition\t1\tHall\t\t-1\t7",
        "partition\t1\tHall\\\t\t-1",
        "option\tEXIT_RESTART\tperhaps",
        "option\tNO_SUCH_OPTION\tyes",
        "timing\tEXIT_TIME\tsoon",
        ""
      })
  void whatItDidNotWriteIsRefused(String text) {
    assertThatThrownBy(() -> SystemText.read(text)).isInstanceOf(IllegalArgumentException.class);
  }

  private static SystemModel randomSystem(Random random) {
    int partitionCount = 1 + random.nextInt(4);
    int zoneCount = 1 + random.nextInt(8);
    List<PartitionModel> partitions = new ArrayList<>();
    for (int index = 0; index < partitionCount; index++) {
      boolean isCommon = index == 2;
      partitions.add(
          new PartitionModel(
              index + 1,
              name(random),
              isCommon ? List.of(0, 1) : List.of(),
              random.nextBoolean() ? PartitionModel.NEVER : random.nextInt(864_000)));
    }
    List<ZoneModel> zones = new ArrayList<>();
    for (int index = 0; index < zoneCount; index++) {
      zones.add(
          new ZoneModel(
              index + 1,
              name(random),
              pick(random, ZoneResponse.values()),
              random.nextInt(partitionCount),
              someOf(random, ArmingMode.values(), () -> EnumSet.noneOf(ArmingMode.class)),
              new EntryDelays(random.nextInt(900), random.nextInt(900), random.nextInt(900)),
              someOf(random, ZoneTrait.values(), () -> EnumSet.noneOf(ZoneTrait.class)),
              random.nextInt(4),
              random.nextInt(30),
              List.copyOf(indexes(random, zoneCount)),
              100 + random.nextInt(600)));
    }
    List<UserModel> users = new ArrayList<>();
    for (int number = 0; number < random.nextInt(4); number++) {
      users.add(
          new UserModel(
              number,
              name(random),
              indexes(random, partitionCount),
              indexes(random, partitionCount),
              random.nextBoolean(),
              random.nextBoolean(),
              random.nextBoolean()));
    }
    List<KeypadModel> keypads =
        List.of(
            new KeypadModel(
                name(random),
                pick(random, KeypadModel.Kind.values()),
                indexes(random, partitionCount)));
    List<CrossGroup> crossGroups =
        random.nextBoolean()
            ? List.of(new CrossGroup(List.of(random.nextInt(zoneCount)), 1 + random.nextInt(600)))
            : List.of();
    Timings timings = Timings.standard();
    for (TimingSetting setting : TimingSetting.values()) {
      timings = timings.with(setting, 1 + random.nextInt(10_000));
    }
    RehearsalOptions options = RehearsalOptions.standard();
    for (Option option : Option.values()) {
      options = options.with(option, random.nextBoolean());
    }
    return new SystemModel(partitions, zones, users, keypads, crossGroups, timings, options);
  }

  private static String name(Random random) {
    return pick(random, NAMES);
  }

  private static <T> T pick(Random random, T[] values) {
    return values[random.nextInt(values.length)];
  }

  private static <T> Set<T> someOf(Random random, T[] values, Supplier<? extends Set<T>> none) {
    Set<T> some = none.get();
    for (T value : values) {
      if (random.nextBoolean()) {
        some.add(value);
      }
    }
    return some;
  }

  private static Set<Integer> indexes(Random random, int count) {
    Set<Integer> indexes = new TreeSet<>();
    for (int index = 0; index < count; index++) {
      if (random.nextBoolean()) {
        indexes.add(index);
      }
    }
    return indexes;
  }
}
