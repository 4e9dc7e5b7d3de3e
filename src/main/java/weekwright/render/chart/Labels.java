package weekwright.render.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds free places for labels. What is asked first gets its place first; a label that may be dropped is dropped when
 * all its places are taken, one that must stand takes the least crowded place then. Not safe for use from several
 * threads.
 */
final class Labels {
    /** A place for a line of letters: where its foot stands, and from where it runs (start, middle or end). */
    record Place(double x, double y, String anchor) {}

    /** The letters of a label. */
    record Style(String kind, Lettering face, double size) {}

    private record Set(Style style, Place place, String text) {}

    private final Box sheet;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> lettered = new ArrayList<>();
    private final List<Set> sets = new ArrayList<>();

    Labels(Box sheet) {
        this.sheet = sheet;
    }

    /** Keeps labels off this part of the drawing. */
    void keepFree(Box box) {
        taken.add(box);
    }

    /** A label that stands in whichever of its places meets least, the earlier one on a tie. */
    Place must(Style style, String text, Place... places) {
        Place chosen = places[0];
        double least = Double.MAX_VALUE;
        for (Place place : places) {
            double covered = covered(box(style, text, place));
            if (covered < least) {
                least = covered;
                chosen = place;
            }
        }
        set(style, text, chosen);
        return chosen;
    }

    /** A label that stands in the first free of its places, or nowhere. */
    boolean may(Style style, String text, Place... places) {
        for (Place place : places) {
            if (free(box(style, text, place))) {
                set(style, text, place);
                return true;
            }
        }
        return false;
    }

    /** Takes this room if it is free. */
    boolean room(Box box) {
        if (free(box)) {
            taken.add(box);
            return true;
        }
        return false;
    }

    /** Takes whichever of these rooms covers least, the earlier one on a tie; gives its index. */
    int leastCovered(Box... rooms) {
        int chosen = 0;
        for (int i = 1; i < rooms.length; i++) {
            if (covered(rooms[i]) < covered(rooms[chosen])) {
                chosen = i;
            }
        }
        taken.add(rooms[chosen]);
        lettered.add(rooms[chosen]);
        return chosen;
    }

    boolean isFree(Box box) {
        return free(box);
    }

    void draw(Svg svg) {
        for (Set label : sets) {
            svg.text(label.style.kind, label.place.x, label.place.y, label.place.anchor, label.text);
        }
    }

    static Box box(Style style, String text, Place place) {
        return Box.ofText(style.face, style.size, place.x, place.y, place.anchor, text);
    }

    private void set(Style style, String text, Place place) {
        sets.add(new Set(style, place, text));
        taken.add(box(style, text, place).wider(1.5));
        lettered.add(box(style, text, place).wider(1.5));
    }

    private boolean free(Box box) {
        return box.within(sheet) && taken.stream().noneMatch(box::meets);
    }

    /** Square pixels of what stands there already; letters count twenty times, standing off the sheet more than all. */
    private double covered(Box box) {
        double sum = box.within(sheet) ? 0 : 1e9;
        for (Box other : taken) {
            sum += box.shared(other);
        }
        for (Box other : lettered) {
            sum += 20 * box.shared(other);
        }
        return sum;
    }
}
