package rimeward.strip;

/** The data of an SVG path in whole drawing units, relative and without needless characters. */
final class PathText {
    private final StringBuilder text = new StringBuilder();
    private int x;
    private int y;
    private boolean inLine;

    void moveTo(int toX, int toY) {
        text.append('M');
        pair(toX, toY);
        x = toX;
        y = toY;
        inLine = false;
    }

    /** A line to a place; none where the pen already is. */
    void lineTo(int toX, int toY) {
        if (toX == x && toY == y) {
            return;
        }
        if (!inLine) {
            text.append('l');
            inLine = true;
        }
        pair(toX - x, toY - y);
        x = toX;
        y = toY;
    }

    private void pair(int first, int second) {
        number(first);
        number(second);
    }

    private void number(int number) {
        boolean afterDigit = text.length() > 0 && Character.isDigit(text.charAt(text.length() - 1));
        if (afterDigit && number >= 0) {
            text.append(' ');
        }
        text.append(number);
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
