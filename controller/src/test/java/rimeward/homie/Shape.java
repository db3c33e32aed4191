package rimeward.homie;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** As much of JSON Schema as the description of our messages uses. */
final class Shape {
    private Shape() {}

    /** What is wrong with a value; empty where nothing is. */
    static List<String> faults(Map<?, ?> schema, @Nullable Object value) {
        List<String> faults = new ArrayList<>();
        look(schema, value, "it", faults);
        return faults;
    }

    private static void look(Map<?, ?> schema, @Nullable Object value, String where, List<String> faults) {
        boolean fits = switch (String.valueOf(schema.get("type"))) {
            case "string" -> value instanceof String;
            case "integer" -> value instanceof Integer || value instanceof Long;
            case "number" -> value instanceof Number;
            case "boolean" -> value instanceof Boolean;
            case "array" -> value instanceof List<?>;
            case "object" -> value instanceof Map<?, ?>;
            default -> false;
        };
        if (!fits) {
            faults.add(where + " is no " + schema.get("type"));
        }
        if (schema.get("enum") instanceof List<?> all && !all.contains(value)) {
            faults.add(where + " is none of " + all);
        }
        if (schema.get("pattern") instanceof String pattern
                && !String.valueOf(value).matches(pattern)) {
            faults.add(where + " does not look like " + pattern);
        }
        if (schema.get("items") instanceof Map<?, ?> items && value instanceof List<?> list) {
            list.forEach(each -> look(items, each, where + "[]", faults));
        }
        if (value instanceof Map<?, ?> members) {
            members(schema, members, where, faults);
        }
    }

    private static void members(Map<?, ?> schema, Map<?, ?> members, String where, List<String> faults) {
        if (schema.get("required") instanceof List<?> required) {
            required.stream()
                    .filter(name -> !members.containsKey(name))
                    .forEach(n -> faults.add(where + " lacks " + n));
        }
        Map<?, ?> known = schema.get("properties") instanceof Map<?, ?> map ? map : Map.of();
        members.forEach((name, member) -> {
            if (known.get(name) instanceof Map<?, ?> each) {
                look(each, member, where + "." + name, faults);
            } else if (Boolean.FALSE.equals(schema.get("additionalProperties"))) {
                faults.add(where + " has " + name + ", which is not described");
            }
        });
    }
}
