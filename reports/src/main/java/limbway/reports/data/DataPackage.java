package limbway.reports.data;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Describes tables so that a program can read them without guessing.
 *
 * @source Frictionless Data Package and Table Schema, version 1 of both specifications
 */
final class DataPackage {

    private DataPackage() {}

    static String json(String name, String title, String description, List<CsvTable> tables) {
        List<Object> resources = new ArrayList<>();
        for (CsvTable table : tables) {
            Map<String, Object> resource = new LinkedHashMap<>();
            resource.put("name", table.name().replace('_', '-'));
            resource.put("path", table.name() + ".csv");
            resource.put("profile", "tabular-data-resource");
            resource.put("description", "Each row is " + table.description() + ".");
            resource.put("format", "csv");
            resource.put("mediatype", "text/csv");
            resource.put("encoding", "utf-8");
            resource.put("dialect", Map.of("lineTerminator", "\n"));
            resource.put("schema", Map.of("fields", fields(table)));
            resources.add(resource);
        }
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("profile", "tabular-data-package");
        root.put("name", name);
        root.put("title", title);
        root.put("description", description);
        root.put("resources", resources);
        return Json.text(root);
    }

    private static List<Object> fields(CsvTable table) {
        List<Object> fields = new ArrayList<>();
        for (Field field : table.fields()) {
            Map<String, Object> object = new LinkedHashMap<>();
            object.put("name", field.name());
            object.put("type", field.type());
            object.put("description", field.description());
            fields.add(object);
        }
        return fields;
    }
}
