package rimeward.adapter.journal;

/**
 * A named text to be kept for ever; a later one of the same name replaces it.
 *
 * @param place which table
 * @param name which row of it
 */
record Note(Place place, String name, String text) {
    /** The same for what replaces one another. */
    String key() {
        return place.name() + ' ' + name;
    }

    /** The tables of such texts. */
    enum Place {
        /** What the last plan before dark promised, by evening. */
        PLAN("plan (evening, text)"),
        /** What other ways would have taken of a night that was, by evening. */
        PAST("past (evening, text)"),
        /** What the service has learned, by its name. */
        LEARNED("learned (name, text)");

        private final String columns;

        Place(String columns) {
            this.columns = columns;
        }

        String columns() {
            return columns;
        }
    }
}
