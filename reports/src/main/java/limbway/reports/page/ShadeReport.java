package limbway.reports.page;

import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.shade.Roof;
import limbway.model.shade.RoofAnswer;
import limbway.model.shade.ShadeYear;
import limbway.reports.data.ShadeInfo;
import limbway.reports.measure.DayShade;
import limbway.reports.measure.PlatformShade;
import limbway.reports.measure.ShadeByHour;
import limbway.reports.measure.SupportHeat;

/**
 * Everything that is told of a year of shade.
 *
 * @param info how it was looked at
 * @param enclosure what stands there
 * @param year which platforms lay in shade when
 * @param hours the same by month and hour
 * @param platforms the same by platform
 * @param hardest the day that is hardest to pass in shade
 * @param roof what roof would end the breach
 * @param heat how hot supports get; empty where the scenario has no weather
 */
public record ShadeReport(
        ShadeInfo info,
        Enclosure enclosure,
        ShadeYear year,
        ShadeByHour hours,
        List<PlatformShade> platforms,
        DayShade hardest,
        RoofAnswer roof,
        Optional<SupportHeat> heat) {

    /** Keeps a copy of the list. */
    public ShadeReport {
        platforms = List.copyOf(platforms);
    }

    /**
     * Gathers what a year says of itself.
     *
     * @param info how it was looked at
     * @param enclosure what stands there
     * @param year which platforms lay in shade when
     * @param roof what roof would end the breach
     * @param heat how hot supports get; empty where the scenario has no weather
     * @return the report
     */
    public static ShadeReport of(
            ShadeInfo info, Enclosure enclosure, ShadeYear year, RoofAnswer roof, Optional<SupportHeat> heat) {
        return new ShadeReport(
                info,
                enclosure,
                year,
                ShadeByHour.of(year),
                PlatformShade.of(year),
                DayShade.hardest(DayShade.of(year)),
                roof,
                heat);
    }

    /**
     * Whether the rule is kept at every moment.
     *
     * @return true without a breach
     */
    public boolean isKept() {
        return year.breachMinutes() == 0;
    }

    /**
     * The roof to try.
     *
     * @return the one that ends the breach, or else the best; empty where nothing is to be mended
     */
    public Optional<Roof> toTry() {
        if (roof instanceof RoofAnswer.Found found) {
            return Optional.of(found.roof());
        }
        return roof instanceof RoofAnswer.NoneFound none ? Optional.of(none.best()) : Optional.empty();
    }

    /**
     * Whether shade is asked for at any moment.
     *
     * @return false where the sun never stands high enough
     */
    public boolean hasSun() {
        return year.sunMinutes() > 0;
    }
}
