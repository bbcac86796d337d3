package keenward.core.rules.catalogue;

import java.util.List;
import java.util.Optional;
import keenward.core.rules.Rule;
import keenward.core.rules.addressing.InputInTwoZones;
import keenward.core.rules.addressing.SerialUsedTwice;
import keenward.core.rules.arming.NothingLiveAtHome;
import keenward.core.rules.arming.OccupiedRoomLive;
import keenward.core.rules.cables.CableFeedsNothing;
import keenward.core.rules.cables.CablesCollapse;
import keenward.core.rules.cables.FedByTwoSupplies;
import keenward.core.rules.cables.FuseTooSmall;
import keenward.core.rules.cables.RingBreakStarves;
import keenward.core.rules.capacity.PlanExceedsPanel;
import keenward.core.rules.capacity.SupplyBeyondPanel;
import keenward.core.rules.contacts.GapTooWide;
import keenward.core.rules.contacts.OpensBeforeItTrips;
import keenward.core.rules.contacts.SecondLeafNotWatched;
import keenward.core.rules.entry.FollowerOffEveryEntryWalk;
import keenward.core.rules.entry.HabitThroughUndelayedDoor;
import keenward.core.rules.entry.InstantZoneOnEntryWalk;
import keenward.core.rules.entry.NoKeypadBehindEntryDoor;
import keenward.core.rules.fire.AlarmTooQuietAtBed;
import keenward.core.rules.fire.CarbonMonoxideDetectorMissing;
import keenward.core.rules.fire.LatchingSmokeWithoutReset;
import keenward.core.rules.fire.LifeSafetyZoneWeakened;
import keenward.core.rules.fire.SmokeDetectorMissing;
import keenward.core.rules.fire.SmokeDetectorTooFar;
import keenward.core.rules.labels.NameWithoutPlace;
import keenward.core.rules.labels.ZoneNameUsedTwice;
import keenward.core.rules.loops.ContactFormUnusual;
import keenward.core.rules.loops.LoopPastThreshold;
import keenward.core.rules.loops.LoopStatesTooClose;
import keenward.core.rules.loops.LoopWithoutResistor;
import keenward.core.rules.loops.WrongNumberOfResistors;
import keenward.core.rules.partitions.CommonAreaNotTied;
import keenward.core.rules.partitions.CommonAreaOfOne;
import keenward.core.rules.partitions.KeypadInsideOtherPartition;
import keenward.core.rules.power.BatteriesUnlike;
import keenward.core.rules.power.BatteryInHeat;
import keenward.core.rules.power.BatteryOutsideTemperatures;
import keenward.core.rules.power.BatteryTooOld;
import keenward.core.rules.power.BatteryTooSmall;
import keenward.core.rules.power.CellDueBeforeVisit;
import keenward.core.rules.power.ChargerOverdrawn;
import keenward.core.rules.power.ChargingTooFast;
import keenward.core.rules.power.CutOffTooLow;
import keenward.core.rules.power.DeviceDiesEarly;
import keenward.core.rules.power.OutputOverloaded;
import keenward.core.rules.power.RechargeTooSlow;
import keenward.core.rules.power.StandbyEndsEarly;
import keenward.core.rules.power.TooManyBatteries;
import keenward.core.rules.power.VoltageTooLow;
import keenward.core.rules.records.PastItsLife;
import keenward.core.rules.records.RowNotPlaced;
import keenward.core.rules.records.ServiceOverdue;
import keenward.core.rules.reporting.HelpCallUnheard;
import keenward.core.rules.reporting.NumberTooLargeToSend;
import keenward.core.rules.reporting.UnfittingEvent;
import keenward.core.rules.reporting.UnusableAccount;
import keenward.core.rules.responses.FollowerWithoutEntry;
import keenward.core.rules.responses.UnsuitableCrossZone;
import keenward.core.rules.responses.UnsuitableResponse;
import keenward.core.rules.survey.AnimalSeen;
import keenward.core.rules.survey.BeamBlocked;
import keenward.core.rules.survey.DetectorInNoZone;
import keenward.core.rules.survey.DeviceBelowGrade;
import keenward.core.rules.survey.DrawingDoesNotFit;
import keenward.core.rules.survey.LooksStraightAtWindow;
import keenward.core.rules.survey.MovingDoorSeen;
import keenward.core.rules.survey.OpeningNotWatched;
import keenward.core.rules.survey.SightCutShort;
import keenward.core.rules.survey.TargetReachedUnseen;
import keenward.core.rules.survey.WarmThingSeen;
import keenward.core.rules.timing.EntryDelayLongerThanNeeded;
import keenward.core.rules.timing.EntryDelayNotSet;
import keenward.core.rules.timing.EntryDelayTooShort;
import keenward.core.rules.timing.ExitTimeTooShort;
import keenward.core.rules.timing.SettingOutsideRegime;
import keenward.core.rules.users.ArmsButCannotDisarm;
import keenward.core.rules.users.PartitionWithoutDuressUser;
import keenward.core.rules.users.RoleNobodyHas;
import keenward.core.rules.wireless.FalseMissingReports;
import keenward.core.rules.wireless.FrequencyNobodyHears;
import keenward.core.rules.wireless.MarginBelowReserve;
import keenward.core.rules.wireless.MeasuredFarFromReckoned;
import keenward.core.rules.wireless.MeasuredLevelWeak;
import keenward.core.rules.wireless.RadioDeviceWithoutSerial;
import keenward.core.rules.wireless.RadioSilenceTooLong;
import keenward.core.rules.wireless.ReceiverBesideMetal;
import keenward.core.rules.wireless.RepeaterBehindRepeater;
import keenward.core.rules.wireless.TooFewCheckIns;

/**
 * Every rule, in the order of the catalogue. A test compares the list with the classes that there
 * are.
 */
public final class RuleRegistry {

  private static final List<Rule> RULES =
      List.of(
          new PlanExceedsPanel(),
          new SupplyBeyondPanel(),
          new InputInTwoZones(),
          new SerialUsedTwice(),
          new UnsuitableResponse(),
          new UnsuitableCrossZone(),
          new FollowerWithoutEntry(),
          new CommonAreaNotTied(),
          new KeypadInsideOtherPartition(),
          new CommonAreaOfOne(),
          new InstantZoneOnEntryWalk(),
          new NoKeypadBehindEntryDoor(),
          new HabitThroughUndelayedDoor(),
          new FollowerOffEveryEntryWalk(),
          new SettingOutsideRegime(),
          new EntryDelayNotSet(),
          new EntryDelayTooShort(),
          new ExitTimeTooShort(),
          new EntryDelayLongerThanNeeded(),
          new OccupiedRoomLive(),
          new NothingLiveAtHome(),
          new ArmsButCannotDisarm(),
          new RoleNobodyHas(),
          new PartitionWithoutDuressUser(),
          new ZoneNameUsedTwice(),
          new NameWithoutPlace(),
          new RadioDeviceWithoutSerial(),
          new RadioSilenceTooLong(),
          new MarginBelowReserve(),
          new FrequencyNobodyHears(),
          new RepeaterBehindRepeater(),
          new TooFewCheckIns(),
          new FalseMissingReports(),
          new MeasuredLevelWeak(),
          new MeasuredFarFromReckoned(),
          new ReceiverBesideMetal(),
          new WrongNumberOfResistors(),
          new LoopWithoutResistor(),
          new LoopStatesTooClose(),
          new ContactFormUnusual(),
          new LoopPastThreshold(),
          new BatteryTooSmall(),
          new OutputOverloaded(),
          new BatteryTooOld(),
          new VoltageTooLow(),
          new RechargeTooSlow(),
          new DeviceDiesEarly(),
          new StandbyEndsEarly(),
          new ChargerOverdrawn(),
          new ChargingTooFast(),
          new BatteriesUnlike(),
          new TooManyBatteries(),
          new BatteryOutsideTemperatures(),
          new BatteryInHeat(),
          new CutOffTooLow(),
          new CellDueBeforeVisit(),
          new CablesCollapse(),
          new FedByTwoSupplies(),
          new FuseTooSmall(),
          new RingBreakStarves(),
          new CableFeedsNothing(),
          new LifeSafetyZoneWeakened(),
          new SmokeDetectorMissing(),
          new CarbonMonoxideDetectorMissing(),
          new LatchingSmokeWithoutReset(),
          new SmokeDetectorTooFar(),
          new AlarmTooQuietAtBed(),
          new UnusableAccount(),
          new UnfittingEvent(),
          new HelpCallUnheard(),
          new NumberTooLargeToSend(),
          new OpeningNotWatched(),
          new DetectorInNoZone(),
          new DrawingDoesNotFit(),
          new DeviceBelowGrade(),
          new TargetReachedUnseen(),
          new SightCutShort(),
          new LooksStraightAtWindow(),
          new BeamBlocked(),
          new AnimalSeen(),
          new WarmThingSeen(),
          new MovingDoorSeen(),
          new GapTooWide(),
          new OpensBeforeItTrips(),
          new SecondLeafNotWatched(),
          new RowNotPlaced(),
          new PastItsLife(),
          new ServiceOverdue());

  private RuleRegistry() {}

  /** Every rule, in the order of the catalogue. */
  public static List<Rule> all() {
    return RULES;
  }

  /** The rule with this code. */
  public static Optional<Rule> find(String code) {
    return RULES.stream().filter(rule -> rule.card().code().equals(code)).findFirst();
  }
}
