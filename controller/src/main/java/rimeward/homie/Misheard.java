package rimeward.homie;

/** What was heard cannot be acted on; the message tells the sender why, with the limit. */
final class Misheard extends Exception {
    private static final long serialVersionUID = 1L;

    private final String why;

    Misheard(String why) {
        super(why, null, false, false); // a flood of them must cost little
        this.why = why;
    }

    String why() {
        return why;
    }
}
