package weekwright.build;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The usual cautions for each hazard, for the hands and for whoever holds the camera: reminders of at most 30 words with
 * the one who decides at the end. Common practice of the trades; the duties of the place and the person named come first.
 */
public final class UsualCautions {
    private static final Map<String, String[]> TEXTS = new LinkedHashMap<>();

    static {
        put("melt", "Everything dry, metal to mould. Face shield, leather, sand floor, a way back free. Rehearse it cold.",
                "Behind glass or on a stand, never in the splash line.", "A trained founder decides");
        put("lead", "No food, no smoking; fitting respirator; wash and change before home.",
                "Stay upwind; wash hands and camera.", "Local lead rules hold");
        put("fell", "Look for lean and dead tops; two ways out; nobody within two tree lengths; stop in wind.",
                "Two tree lengths off, camera left alone.", "A trained feller decides");
        put("stump", "Find buried lines first; keep soil and people off the edge; out of the machine's swing.",
                "Not on the edge, not in the swing.", "A competent person judges the trench");
        put("saw", "Leg protection, helmet, ears, eyes; both hands; mind the tip. Never alone.",
                "Not before the bar or in the chips' way.", "A certificated operator decides");
        put("belt", "Guards on; lock it off before touching; hair tied, no gloves, stop within reach.",
                "Long lens; nothing that hangs; lock off for close shots.", "A qualified person passes the machine");
        put("woodm", "Guard and riving knife on, push stick, sharp tool; no setting while it runs.",
                "Out of the line of the cut; no word to the operator.", "A trained machinist decides");
        put("steam", "The box must vent. Gloves; stand clear of lid and bending line.",
                "Not over the lid, not in line with the bend.", "Pressure parts need a qualified person");
        put("dust", "Extract at the tool, vacuum, fitted respirator; keep sparks away.",
                "Respirator too; keep lamps out of the dust.", "Local limits hold");
        put("epoxy", "Gloves, air, small mixes; stop at a rash.", "Air, and no touching.", "The data sheet holds");
        put("solv", "No flame; oily rags into a lidded metal can; air low down.",
                "No hot lamps near.", "The fire authority decides");
        put("height", "Rail before harness; check ladder and planks; nothing loose above people.",
                "Film from the ground.", "A qualified person passes the scaffold");
        put("lift", "Know the weight; inspected slings; one gives signs; nobody under the load.",
                "Outside the fall of load and boom.", "A qualified rigger decides");
        put("jack", "Crib as you lift; never underneath; chock what can roll.",
                "Never under or beside it while it moves.", "Ask an engineer before a shore is shifted");
        put("hand", "Share the load, use a barrow, plan the way, lift near the body.",
                "Keep the way free.", "A health adviser decides in doubt");
        put("space", "Test the air before and during; somebody outside; a rescue that needs no entry.",
                "From outside only.", "Trained entrants only, with a permit");
        put("hot", "Clear the floor, extinguisher in reach, watch an hour after.",
                "Out of sparks and quench; no synthetic clothes.", "Fire rules and insurer decide");
        put("gas", "Chained upright, caps on, leak test, flash arrestors.",
                "Not beside cylinders.", "The supplier's rules hold");
        put("elec", "Residual-current protection, whole dry leads; lock off to mend.",
                "Battery lamps rather than leads.", "A licensed electrician decides");
        put("noise", "Ears on; short spells with what shakes; warm hands.", "Ears on too.", "Local limits hold");
        put("lime", "Goggles, gloves; wash it off at once; cut stone wet, with a respirator.",
                "Goggles; wipe the lens, not the eye.", "The data sheet holds");
        put("water", "Lifejacket, throw line, somebody beside; clear of the lines' bight.",
                "Lifejacket too; camera on a strap.", "Who keeps the water decides");
        put("weath", "Shade, water, breaks to warm up; stop at thunder.", "The same.", "Health advice holds");
        put("line", "Nobody films from where things fall, pinch, splash or kick.",
                "Lock the camera off and walk away.", "Who leads the work may stop it");
        put("dist", "Agree a word for start and for stop; silence in the risky part.",
                "No questions, no second take in haste.", "Who does the work may refuse a shot");
        put("drone", "Nobody under it; in sight; not during lifts or felling.",
                "Check air space, wind, battery.", "A licensed pilot decides");
        put("cable", "Leads overhead or taped; none through wet or doorways.",
                "Lamps guarded, stands weighted.", "A licensed electrician decides");
        put("batt", "No damaged packs; charge on stone with somebody there.",
                "Poles covered; cool before charging.", "Carrier and fire rules hold");
        put("lone", "Nothing dangerous alone; a time to report, and somebody who acts.",
                "The same.", "The insurer's terms hold");
        put("visit", "Accompanied, behind the line, eyes and ears covered; no children at machines.",
                "Ask before filming them.", "The insurer's terms hold");
        put("fatig", "Shorter days after heavy ones; nobody drives tired.", "The same.", "A health adviser decides");
    }

    private UsualCautions() {}

    private static void put(String code, String hands, String camera, String decides) {
        TEXTS.put(code, new String[] {hands + " " + decides + ".", camera + " " + decides + "."});
    }

    /** The caution for a hazard; empty for a code that is not known. */
    public static Optional<String> of(String code, Caution.Whom whom) {
        return Optional.ofNullable(TEXTS.get(code)).map(both -> both[whom == Caution.Whom.HANDS ? 0 : 1]);
    }
}
