package limbway.sim.experiment.placement;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Point;
import limbway.model.heat.HeatSettings;
import limbway.model.heat.OperativeTemperature;
import limbway.model.light.SunPosition;
import limbway.model.shade.ShadeScene;
import limbway.model.shade.ShadeSettings;
import limbway.model.study.Climate;

/** Sun and heat at a place at the hours when it is used. */
final class FeedingLight {

    /** The middle of a body above the place [m], as in the day: an assumption. */
    private static final double BODY_M = 0.4;

    private final Enclosure enclosure;
    private final ShadeScene scene;
    private final Optional<Climate> climate;
    private final LocalDate date;
    private final List<LocalTime> hours;
    private final OperativeTemperature felt = new OperativeTemperature(HeatSettings.standard());

    FeedingLight(Enclosure enclosure, Optional<Climate> climate, LocalDate date, List<LocalTime> hours) {
        this.enclosure = enclosure;
        this.scene = ShadeScene.of(enclosure, ShadeSettings.standard());
        this.climate = climate;
        this.date = date;
        this.hours = List.copyOf(hours);
    }

    /** The greatest share of the sun's beam that reaches a place at one of the hours, 0 to 1. */
    double greatestBeam(Point place) {
        return hours.stream()
                .mapToDouble(hour -> beam(place, moment(hour)))
                .max()
                .orElse(0);
    }

    /** Mean operative temperature at the hours [°C]; empty where the weather is unknown. */
    OptionalDouble meanOperativeC(Point place) {
        return climate.isEmpty()
                ? OptionalDouble.empty()
                : hours.stream()
                        .mapToDouble(hour -> operativeC(place, moment(hour)))
                        .average();
    }

    private double operativeC(Point place, Instant moment) {
        double sky = scene.sky(place.xM(), place.yM(), place.zM() + BODY_M, season());
        return felt.ofPlaceC(
                climate.orElseThrow().weather().at(enclosure.site(), moment),
                beam(place, moment),
                sky,
                SunPosition.at(enclosure.site(), moment).altitudeDeg());
    }

    private double beam(Point place, Instant moment) {
        SunPosition sun = SunPosition.at(enclosure.site(), moment);
        return sun.altitudeDeg() <= 0
                ? 0
                : scene.beam(place.xM(), place.yM(), place.zM() + BODY_M, sun.direction(), season());
    }

    private int season() {
        return scene.season(MonthDay.from(date));
    }

    private Instant moment(LocalTime hour) {
        return date.atTime(hour).atZone(enclosure.site().zone()).toInstant();
    }
}
