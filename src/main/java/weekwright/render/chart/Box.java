package weekwright.render.chart;

/** A rectangle of the drawing, in its pixels: left and top edge, right and bottom edge. */
record Box(double left, double top, double right, double bottom) {
    /** Whether the two share more than an edge. */
    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** Square pixels that both cover. */
    double shared(Box other) {
        double width = Math.min(right, other.right) - Math.max(left, other.left);
        double height = Math.min(bottom, other.bottom) - Math.max(top, other.top);
        return width > 0 && height > 0 ? width * height : 0;
    }

    boolean within(Box other) {
        return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
    }

    /** The box of a line of letters whose foot stands on y. */
    static Box ofText(Lettering face, double size, double x, double y, String anchor, String text) {
        double width = face.width(text, size);
        double left = switch (anchor) {
            case "middle" -> x - width / 2;
            case "end" -> x - width;
            default -> x;
        };
        return new Box(left, y - size * 0.78, left + width, y + size * 0.22);
    }

    Box wider(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }
}
