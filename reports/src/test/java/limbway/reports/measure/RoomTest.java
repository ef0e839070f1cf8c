package limbway.reports.measure;

import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.energy.EnergySettings;
import limbway.model.route.ChoiceSharpness;
import limbway.model.study.Variant;
import limbway.reports.Yard;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class RoomTest {

    @Test
    void onTheYardTheSamplingErrorIsBelowAThousandthAndLongerArmsReachMore() {
        var study = Yard.study();
        for (Variant layout : study.layouts()) {
            Room room = Room.of(new Habitat(
                    layout,
                    study.animals(),
                    Optional.empty(),
                    EnergySettings.standard(),
                    ChoiceSharpness.GROUP.standard()));
            room.usable().forEach((body, volume) -> {
                String where = layout.name() + ", " + body + ": " + volume;
                assertTrue(volume.standardErrorM3() < 0.001 * volume.m3(), where);
                assertTrue(volume.m3() > 600 * Math.min(1, volume.reachM()) && volume.share() < 1, where);
                assertTrue(volume.offGroundM3() < volume.m3(), where);
            });
            assertTrue(
                    room.usable().get("flanged male").m3()
                            > room.usable().get("juvenile").m3(),
                    layout.name());
            // reach and grip of a mother are those of a female alone, her infant holds on to her
            assertEquals(
                    room.usable().get("adult female").m3(),
                    room.usable().get("adult female and infant").m3(),
                    0,
                    layout.name());
        }
    }
}
