package curewindow.told;

import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Stay;
import curewindow.problem.Where;
import curewindow.shop.BodyType;
import curewindow.shop.Car;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Jobs on one car that differ only in what dates depend on. */
final class BlueCar {

  private static final Car CAR =
      new Car(
          OptionalInt.empty(),
          BodyType.SEDAN,
          PaintTone.MID,
          Optional.empty(),
          "blue four-door",
          Set.of());

  private BlueCar() {}

  static Job job(
      String place,
      Parking parking,
      List<Stay> stays,
      List<FittedItem> items,
      List<PastVisit> seen) {
    return new Job(
        "B-1",
        "",
        "en",
        CAR,
        place,
        new ParkingPlan(parking, parking),
        stays,
        items,
        List.of(),
        seen,
        Where.file("jobs/B-1.yaml"));
  }
}
