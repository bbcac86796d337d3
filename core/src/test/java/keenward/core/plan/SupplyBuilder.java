package keenward.core.plan;

import java.time.LocalDate;
import keenward.core.quantities.Capacity;
import keenward.core.quantities.Current;
import keenward.core.quantities.Temperature;
import keenward.core.quantities.Voltage;

/** Builds a supply of a test's plan. */
public final class SupplyBuilder {
  private final String name;
  private Fact<Voltage> voltage = Fact.missing();
  private Fact<Current> rating = Fact.missing();
  private Fact<Current> ownStandby = Fact.missing();
  private Fact<Current> ownAlarm = Fact.missing();
  private Fact<Current> charge = Fact.missing();
  private Fact<Current> total = Fact.missing();
  private Fact<Integer> count = Fact.missing();
  private Fact<Boolean> alike = Fact.missing();
  private Fact<Temperature> usual = Fact.missing();
  private Fact<Voltage> cutOff = Fact.missing();
  private Fact<Capacity> largest = Fact.missing();
  private Fact<Capacity> capacity = Fact.missing();
  private Fact<LocalDate> fitted = Fact.missing();
  private Fact<Temperature> temperature = Fact.missing();
  private Fact<Double> ageing = Fact.missing();
  private Fact<Boolean> signalsMainsFailure = Fact.missing();

  private Fact<Boolean> resets = Fact.missing();

  SupplyBuilder(String name) {
    this.name = name;
  }

  public SupplyBuilder voltage(String text) {
    voltage = Fact.of(Quantities.of(Voltage.parse(text)));
    return this;
  }

  public SupplyBuilder rating(String text) {
    rating = Fact.of(Quantities.of(Current.parse(text)));
    return this;
  }

  public SupplyBuilder own(String standby, String alarm) {
    ownStandby = Fact.of(Quantities.of(Current.parse(standby)));
    ownAlarm = Fact.of(Quantities.of(Current.parse(alarm)));
    return this;
  }

  public SupplyBuilder charge(String text) {
    charge = Fact.of(Quantities.of(Current.parse(text)));
    return this;
  }

  public SupplyBuilder totalCurrent(String text) {
    total = Fact.of(Quantities.of(Current.parse(text)));
    return this;
  }

  public SupplyBuilder batteries(int howMany) {
    count = Fact.of(howMany);
    return this;
  }

  public SupplyBuilder alike(boolean yes) {
    alike = Fact.of(yes);
    return this;
  }

  public SupplyBuilder usualTemperature(String text) {
    usual = Fact.of(Quantities.of(Temperature.parse(text)));
    return this;
  }

  public SupplyBuilder cutOff(String text) {
    cutOff = Fact.of(Quantities.of(Voltage.parse(text)));
    return this;
  }

  public SupplyBuilder largestBattery(String text) {
    largest = Fact.of(Quantities.of(Capacity.parse(text)));
    return this;
  }

  public SupplyBuilder battery(String text) {
    capacity = Fact.of(Quantities.of(Capacity.parse(text)));
    return this;
  }

  public SupplyBuilder batteryFitted(String date) {
    fitted = Fact.of(Quantities.date(date));
    return this;
  }

  public SupplyBuilder lowestTemperature(String text) {
    temperature = Fact.of(Quantities.of(Temperature.parse(text)));
    return this;
  }

  public SupplyBuilder ageingFactor(double factor) {
    ageing = Fact.of(factor);
    return this;
  }

  public SupplyBuilder signalsMainsFailure(boolean yes) {
    signalsMainsFailure = Fact.of(yes);
    return this;
  }

  public SupplyBuilder resetsSmokeDetectors(boolean yes) {
    resets = Fact.of(yes);
    return this;
  }

  Supply build() {
    Fact<Battery> battery =
        capacity.isGiven() || fitted.isGiven()
            ? Fact.of(new Battery(capacity, fitted, count, alike))
            : Fact.missing();
    return new Supply(
        name,
        Fact.missing(),
        voltage,
        rating,
        ownStandby,
        ownAlarm,
        charge,
        total,
        largest,
        battery,
        temperature,
        usual,
        cutOff,
        ageing,
        signalsMainsFailure,
        resets);
  }
}
