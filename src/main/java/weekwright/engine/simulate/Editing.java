package weekwright.engine.simulate;

import static weekwright.engine.simulate.EpisodeTable.NO_SLOT;
import static weekwright.engine.simulate.State.LATER;
import static weekwright.engine.simulate.TaskTable.NO_DAY;

import java.util.Arrays;
import java.util.stream.IntStream;
import weekwright.engine.Inputs.LineKind;
import weekwright.engine.Outcome;
import weekwright.engine.Outcome.Slot;

/**
 * Episodes from complete footage to publication (rules 65 to 75). The earliest slot is edited first among those whose footage is
 * complete and whose slot lies within the window; a slot without its own episode makes one from the story bank as soon as it holds the
 * target minutes; standbys are edited when nothing else is.
 */
final class Editing {
    private static final int NOT_MADE = -1;
    /** In the last days before a slot, and after it, an editor gives all the hours that he has stated (rules 120, 133). */
    private static final int LAST_DAYS = 2;

    private final Setup setup;
    private final Calendar calendar;
    private final Luck luck;
    private final People people;
    private final Cash cash;
    Trace trace;
    private State x;
    private final int early;
    private final int window;
    private final double target;
    /** By day, whether it is a day of editing; null for any. */
    private final boolean[] editDay;

    /** Episodes without a slot that are not published, in the order of the file. */
    private final int[] standbys;

    Editing(Setup setup, Luck luck, People people, Cash cash) {
        this.setup = setup;
        calendar = setup.calendar;
        this.luck = luck;
        this.people = people;
        this.cash = cash;
        early = setup.inputs.publishing().earlyDays();
        window = setup.inputs.publishing().editWindowDays();
        target = setup.inputs.publishing().targetMinutes();
        editDay = calendar.onWeekdays(setup.inputs.publishing().editDays());
        standbys = IntStream.range(0, setup.episodes.count)
                .filter(e -> setup.episodes.slot[e] == NO_SLOT && setup.episodes.published[e] == NO_DAY)
                .toArray();
    }

    /** On the as-of morning, before the marks of past work are set. */
    void begin(State state) {
        x = state;
        EpisodeTable episodes = setup.episodes;
        x.toEdit = 0;
        x.uncut = 0;
        x.cut = 0;
        for (int e = 0; e < episodes.count; e++) {
            boolean complete = episodes.footage[e] != NO_DAY;
            x.tellsLeft[e] = complete ? 0 : episodes.tells[e];
            x.footageDay[e] = complete ? episodes.footage[e] : -1;
            x.lastTold[e] = Outcome.NOBODY;
            x.cutDay[e] = episodes.cut[e] == NO_DAY ? LATER : episodes.cut[e];
            x.editLeft[e] = episodes.cut[e] == NO_DAY ? luck.edit[e] : 0;
            x.published[e] = episodes.published[e] != NO_DAY;
            if (!x.published[e]) {
                x.uncut += x.cutDay[e] == LATER ? 1 : 0;
                x.cut += x.cutDay[e] == LATER ? 0 : 1;
                if (x.cutDay[e] == LATER && x.tellsLeft[e] == 0) {
                    x.toEdit(episodes.placeBySlot[e]);
                }
            }
        }
        Arrays.fill(x.bankEdit, NOT_MADE);
        Arrays.fill(x.bankCut, LATER);
        Arrays.fill(x.bankUsed, false);
    }

    /** Goes on with a copied state. */
    void restart(State state) {
        x = state;
    }

    private boolean editable(int e, int day) {
        return !x.published[e] && x.cutDay[e] == LATER && x.tellsLeft[e] == 0 && x.footageDay[e] < day;
    }

    /** Whether anything may still be edited although no task is open any more. */
    boolean busy() {
        return x.bank >= target || x.uncut > 0 || x.bankEditing > 0;
    }

    /** Before work that happens once: the crew's own lines and what is published tomorrow (rule 133). */
    void urgent(int day) {
        if (setup.crowd.named == 0) {
            return;
        }
        ownLines(day);
        makeFromBank(day);
        inWindow(day, day + 1);
    }

    /** A day on which nobody is there: an episode is made from the bank all the same. */
    void nobody(int day) {
        if (setup.crowd.named > 0) {
            makeFromBank(day);
        }
    }

    /** A day of editing. */
    void day(int day) {
        if (setup.crowd.named == 0) {
            return;
        }
        ownLines(day);
        makeFromBank(day);
        if (x.toEdit + x.bankEditing > 0) {
            edit(day);
        }
        advance(day);
    }

    private void edit(int day) {
        boolean worked = inWindow(day, day + window);
        int slot = standbys.length > 0 && !worked ? firstSlot(day) : -1;
        if (slot >= 0
                && calendar.slots[slot] - window <= day
                && allowed(calendar.slots[slot], day)
                && !somethingCut(slot)) {
            for (int e : standbys) {
                if (editable(e, day)) {
                    edit(e, day);
                }
            }
        }
    }

    /** With days of editing set, only on those until the last days before the slot, then on any (rule 133). */
    private boolean allowed(int slot, int day) {
        return editDay == null || editDay[day] || day >= slot - LAST_DAYS;
    }

    /** Edits planned episodes and those from the bank up to a slot, earliest slot first; whether there was any. */
    private boolean inWindow(int day, int last) {
        EpisodeTable episodes = setup.episodes;
        int[] slots = calendar.slots;
        int i = 0;
        int b = x.bankEditing > 0 ? x.firstBank : slots.length;
        boolean any = false;
        while (true) {
            int planned = i < x.toEdit ? episodes.slot[episodes.bySlot[x.ready[i]]] : NO_SLOT;
            int made = b < slots.length ? slots[b] : NO_SLOT;
            if (Math.min(planned, made) > last) {
                return any;
            }
            if (planned <= made) {
                int e = episodes.bySlot[x.ready[i]];
                if (editable(e, day)) {
                    any = true;
                    if (allowed(planned, day)) {
                        edit(e, day);
                    }
                }
                i += x.cutDay[e] == LATER ? 1 : 0;
            } else {
                if (x.bankEdit[b] > 0) {
                    any = true;
                    if (allowed(made, day)) {
                        editBank(b, day);
                    }
                }
                b++;
            }
        }
    }

    private void advance(int day) {
        int s = x.firstBank;
        while (s < calendar.slots.length && calendar.slots[s] < day && x.bankEdit[s] <= 0) {
            s++;
        }
        x.firstBank = s;
    }

    /** The first slot on or after a day, -1 if none. */
    private int firstSlot(int day) {
        int s = calendar.slotsBefore[day];
        return s < calendar.slots.length ? s : -1;
    }

    private void ownLines(int day) {
        OwnLines own = setup.own;
        if (own.count == 0 || own.day[own.count - 1] < day) {
            return;
        }
        for (int i = 0; i < own.count; i++) {
            int e = own.episode[i];
            if (own.day[i] == day && own.kind[i] == LineKind.EDIT) {
                int minutes = people.release(i, own.person[i]);
                if (minutes > 0 && e >= 0 && editable(e, day)) {
                    give(e, own.person[i], minutes, day);
                }
            }
        }
    }

    /** A slot in the window without its own episode sets the target minutes aside (rule 73). */
    private void makeFromBank(int day) {
        if (target <= 0 || x.bank < target) {
            return;
        }
        int[] slots = calendar.slots;
        for (int s = calendar.slotsBefore[day]; s < slots.length && slots[s] - window <= day; s++) {
            int own = setup.episodes.ofSlot[s];
            if (x.bankEdit[s] == NOT_MADE && (own < 0 || x.published[own]) && x.bank >= target) {
                x.bank -= target;
                x.bankEdit[s] = luck.bankEdit(slots[s]);
                x.bankEditing++;
            }
        }
    }

    private int editorOf(int named) {
        return named >= 0 ? named : people.mostLeft(setup.crowd.edit, 1, 0);
    }

    private void edit(int e, int day) {
        int p = editorOf(setup.episodes.editor[e]);
        if (p >= 0) {
            if (setup.episodes.slot[e] <= day + LAST_DAYS) {
                people.stay(p, x.editLeft[e]);
            }
            give(e, p, people.left(p), day);
        }
    }

    private void give(int e, int p, int available, int day) {
        int minutes = Math.min(available, x.editLeft[e]);
        if (minutes <= 0) {
            return;
        }
        spend(p, minutes, day, e);
        x.editLeft[e] -= minutes;
        if (x.editLeft[e] == 0) {
            x.cutDay[e] = day;
            x.edited(setup.episodes.placeBySlot[e]);
            x.uncut--;
            x.cut++;
        }
    }

    private void editBank(int s, int day) {
        int p = editorOf(-1);
        if (p >= 0 && calendar.slots[s] <= day + LAST_DAYS) {
            people.stay(p, x.bankEdit[s]);
        }
        int minutes = p < 0 ? 0 : Math.min(people.left(p), x.bankEdit[s]);
        if (minutes <= 0) {
            return;
        }
        spend(p, minutes, day, -1 - s);
        x.bankEdit[s] -= minutes;
        if (x.bankEdit[s] == 0) {
            x.bankCut[s] = day;
            x.bankEditing--;
        }
    }

    private void spend(int p, int minutes, int day, int episode) {
        people.use(p, minutes);
        cash.wage(people.pay(p), minutes);
        if (trace != null) {
            trace.edits(day, p, episode, minutes);
        }
    }

    private boolean somethingCut(int slot) {
        int by = calendar.slots[slot] - early;
        return planned(slot, by) >= 0 || fromBank(by) >= 0;
    }

    /** Its own episode if cut by a day, else the cut, unpublished one with the earliest slot; -1 if none (rule 69). */
    private int planned(int slot, int by) {
        if (x.cut == 0) {
            return -1;
        }
        EpisodeTable episodes = setup.episodes;
        int own = episodes.ofSlot[slot];
        if (own >= 0 && !x.published[own] && x.cutDay[own] <= by) {
            return own;
        }
        for (int i = x.firstUnpublished; i < episodes.count; i++) {
            int e = episodes.bySlot[i];
            if (episodes.slot[e] == NO_SLOT) {
                break;
            }
            if (!x.published[e] && x.cutDay[e] <= by) {
                return e;
            }
        }
        return -1;
    }

    private int fromBank(int by) {
        for (int s = x.firstBankUnused; s < x.bankCut.length; s++) {
            if (calendar.slots[s] - window > by + early) {
                break;
            }
            if (!x.bankUsed[s] && x.bankCut[s] <= by) {
                return s;
            }
        }
        return -1;
    }

    private int standby(int by) {
        for (int e : standbys) {
            if (!x.published[e] && x.cutDay[e] <= by) {
                return e;
            }
        }
        return -1;
    }

    private void publish(int e) {
        x.published[e] = true;
        x.cut--;
    }

    /** The evening of a slot's day: own episode, another planned one, one from the bank, a standby, or nothing. */
    void slot(int s, int day) {
        int by = day - early;
        boolean left = s < setup.inputs.publishing().leftEmpty();
        int e = left ? -1 : planned(s, by);
        Slot outcome;
        if (left) {
            outcome = Slot.EMPTY;
        } else if (e >= 0) {
            outcome = e == setup.episodes.ofSlot[s] ? Slot.OWN : Slot.OTHER;
            publish(e);
        } else {
            int b = fromBank(by);
            e = b >= 0 ? -1 : standby(by);
            outcome = b >= 0 ? Slot.BANK : e >= 0 ? Slot.STANDBY : Slot.EMPTY;
            if (b >= 0) {
                x.bankUsed[b] = true;
            } else if (e >= 0) {
                publish(e);
            }
        }
        x.slotOutcome[s] = (byte) outcome.ordinal();
        if (outcome == Slot.EMPTY) {
            cash.emptySlot();
        } else {
            cash.published(day);
        }
        if (trace != null) {
            trace.slot(day, outcome.ordinal(), e);
        }
        int i = x.firstUnpublished;
        while (i < setup.episodes.count && x.published[setup.episodes.bySlot[i]]) {
            i++;
        }
        x.firstUnpublished = i;
        int u = x.firstBankUnused;
        while (u < s && (x.bankUsed[u] || x.bankEdit[u] == NOT_MADE)) {
            u++;
        }
        x.firstBankUnused = u;
    }
}
