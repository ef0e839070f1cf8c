package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.model.study.Attendance;
import limbway.model.study.Keeping;
import limbway.model.study.Viewpoint;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.OnlookerEntry;
import limbway.scenarios.entry.OnlookerReader;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Problems;

/** Reads what people do in and around a layout. */
final class KeepingPlan {

    private final Names names;
    private final Terrain terrain;
    private final Problems problems;

    KeepingPlan(Names names, Terrain terrain, Problems problems) {
        this.names = names;
        this.terrain = terrain;
        this.problems = problems;
    }

    Keeping read(Sheet sheet) {
        List<MappingNode> feedings = new ArrayList<>();
        List<MappingNode> bedding = new ArrayList<>();
        List<MappingNode> closures = new ArrayList<>();
        List<Attendance> staff = new ArrayList<>();
        for (MappingNode node : sheet.keepers()) {
            Optional<Form> kind = EntryKind.require(node, Form.KEEPERS, "keepers", problems);
            if (kind.isPresent()) {
                switch (kind.get()) {
                    case BED -> bedding.add(node);
                    case CLOSE, CLEAN -> closures.add(node);
                    case STAFF ->
                        onlooker(node, Form.STAFF)
                                .ifPresent(entry ->
                                        staff.add(new Attendance(entry.id().text(), point(entry), entry.hours())));
                    default -> feedings.add(node);
                }
            }
        }
        List<Viewpoint> viewpoints = new ArrayList<>();
        for (MappingNode node : sheet.visitors()) {
            onlooker(node, Form.VIEWPOINT)
                    .ifPresent(entry -> viewpoints.add(new Viewpoint(entry.id().text(), point(entry), entry.hours())));
        }
        CarePlan care = new CarePlan(names, problems);
        return new Keeping(
                new FeedingPlan(names, problems).read(sheet, feedings),
                care.bedding(bedding),
                care.closures(closures),
                staff,
                viewpoints);
    }

    private Optional<OnlookerEntry> onlooker(MappingNode node, Form form) {
        Optional<OnlookerEntry> entry = new OnlookerReader(problems).read(node, form);
        boolean fresh = names.register(node, form, problems);
        return entry.filter(one -> fresh);
    }

    private Point point(OnlookerEntry entry) {
        Point at = entry.at().point();
        return entry.at().onGround() ? at.atHeight(terrain.heightM(at.xM(), at.yM())) : at;
    }
}
