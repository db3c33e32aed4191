package rimeward.homie;

/**
 * How a property is declared. Nothing is believed of it while its topic holds nothing.
 *
 * @param id letters a to z, digits and {@code -} only
 * @param format as the datatype asks for it; empty where it asks for none
 * @param unit one of the convention's, byte for byte; empty where it has none
 * @param retained false for what is an event and no state
 */
record Property(
        String id, String name, Datatype datatype, String format, String unit, boolean settable, boolean retained) {

    static Property of(String id, String name, Datatype datatype) {
        return new Property(id, name, datatype, "", "", false, true);
    }

    static Property text(String id, String name) {
        return of(id, name, Datatype.STRING);
    }

    static Property number(String id, String name, String unit) {
        return of(id, name, Datatype.FLOAT).in(unit);
    }

    /** One of an enumeration's constants, as {@link Words} spells them. */
    static Property oneOf(String id, String name, Enum<?>[] all) {
        return of(id, name, Datatype.ENUM).as(Words.list(all));
    }

    /** @param labels what false and true are called; the payload stays {@code false} and {@code true} */
    static Property yesNo(String id, String name, String labels) {
        return of(id, name, Datatype.BOOLEAN).as(labels);
    }

    Property in(String otherUnit) {
        return new Property(id, name, datatype, format, otherUnit, settable, retained);
    }

    Property as(String otherFormat) {
        return new Property(id, name, datatype, otherFormat, unit, settable, retained);
    }

    Property settable(boolean may) {
        return new Property(id, name, datatype, format, unit, may, retained);
    }

    Property passing() {
        return new Property(id, name, datatype, format, unit, settable, false);
    }
}
