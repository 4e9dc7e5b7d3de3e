package weekwright.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * The few words that the crew wrote beside their hours, by hand, in the order in which they were written. About one entry
 * in three carries one; a line that begins with {@code !} belongs to the entry that ends the task.
 */
final class Remarks {
    private static final String WORDS = """
            pit.1: Datum nail in the lime tree, 100.000; Long wall leans 35 mm in at the top; Drew the breast curve off a hardboard template; !Drawing inked, copy over the bench
            roof.1: Two tarpaulins overlap by a metre; Props under the tie beam, feet on oak pads; !Tight before the frost
            pit.2: Sandbags three deep; Pump holds it at 20 cm; Clay tamped behind the bags; !Dry at the upstream end
            shaft.1: Hinge left 60 mm; Lean checked with a plumb line; !Down where we wanted it, 1.9 m of clear butt sound
            saw.2: Mandrel smoked with a candle; Bronze shells tinned; !Both bearings poured, no cold shut
            shaft.2: Rollers and one horse, 60 m an hour; !On the trestles, bark on
            wheel.1: Storm tree, second log, 80 mm planks; Sticks every 500 mm; Ends waxed the same evening; !Stacks covered, 7 m3 by the tape
            saw.1: Ivy roots through the blade guide; Top wheel off, 64 kg; Lead paint, wet-scraped outside; !Every part in oil on the bench
            shaft.3: Hewn to 545 mm square; Heart 30 mm off centre at the tail end; !Squared and ends waxed
            pit.3: Two barrows, plank run on the east side; Pinion of the old sluice found; Clay pipe, a horseshoe, one boot; Silt 70 cm deep at the breast; Footing shows under the wing wall; Frozen crust till ten; Pump an hour before we could start; !Swept to rock
            gear.2: Froe splits apple well where it is straight; !48 blanks, ends waxed
            pit.4: Courses one and two numbered in chalk, then in paint; Hearting is loose earth, no lime left; Course five, 31 stones; Long through-stone needed both rollers; !Laid out on the meadow by course
            sluice.1: Fall is 214 mm in 62 m; !Pegs every five metres
            sluice.2: Bramble, hazel, one alder; Alder root under the wall at metre 30; Burnt the brush on the gravel; !Open from end to end
            pit.5: Sound ledge at 640 mm; Trench side boarded at the soft end; Spring comes in behind, a finger thick; !Ledge clean, levelled within 15 mm
            pit.6: Beds and joints only, faces left; Snapped one across an old drill hole; Eleven quoins set aside; !Enough for both lifts
            saw.4: Reinforcement off the old fence; Holding-down bolts in a template; !Struck level, covered with wet sacks
            pit.7: Mix 1 to 2.5, damp; Three stones over 120 kg, rollers and bars; Sacks wetted at six and at nine; Stopped at noon, 27 degrees; !Course closed, covered for a week
            pit.15: Raked out to 40 mm; Snail shells for pinning; Pressed, not brushed, until it is leather hard; !Long wall done to the arch
            pit.16: Gravel behind, weep at 300 mm; !Runs clear
            shaft.8: Shrink rule 1 in 100 for iron; Draft three degrees on the wings; Core box in lime, shellacked twice; !Pattern handed over at the foundry
            sluice.3: Two rows up, hearting packed; Alder root cut back; Coping stones of the old bridge, four set; Long stones into the bank every metre; Wall seat clean to metre 20; Dry stone, no lime; Water tried it last night, nothing moved
            pit.9: Course two on; Through-stones every 1.2 m; Hearting packed, no voids; Line moved up; Lime late, worked up with what was left; Wet sacks over all; 28 degrees by eleven, stopped; Course four closed; !Lower lift level within 8 mm
            pit.12: Slabs from the cowshed, best faces up; Breast follows the template, gap 12 mm; Bed raked for key; !Breast closed, swept with dry lime
            pit.13: Cut the seat for the north stone; Slung, turned, set down again; North stone down, 0.3 mm in the metre; !Both level, 4.812 m apart
            saw.6: Bent strip for the lower wheel guard; Hinges tacked; Mesh cut, edges folded; Belt side: guard fits, gap 8 mm
            hurst.1: Sill frame drawn full size on the barn floor; Post heights from the bearing level, not from the floor; !Rod made, all heights on one lath
            pit.11: Tower handed over by the erector; Course seven; Quoins plumb; Lime light, covered from the sun; Course nine, last through-stones; !Coping on, wall stands
            shaft.10: Ring test: one dull; Crack in the second wing, dye shows 70 mm; !One sound, one back to the foundry
            shaft.5: Corner lines struck from the centre nail; First corner off with the axe; Plane to the line, 230 mm flats; Eight sides; Sixteen, flats 104 mm; !All flats within 2 mm
            pit.17: Neighbours on the sandbags; !Water in at 15:40, nothing moved
            wheel.2: Loft floor painted grey; Rim struck with a trammel, 1.95 m; Scarf drawn at 220 mm; !Templates cut in 6 mm ply, numbered
            shaft.6: Turned by hand in two saddles, plane as a lathe tool; !Both ends round within 1 mm
            shaft.7: First mortise, from both faces; 4 mm wider at the far side for the wedges; Grain runs out to the north, pared last; New 50 mm chisel earns its keep; Bored with the T auger first; Through at 14:10; !Six through, cheeks checked with a straightedge
            shaft.12: Cross struck from the centre; Sawn to depth 210 mm; Wing slots fit the sound gudgeon; Cleared by chisel, slow in end grain; !Both ends cut
            roof.2: Rafter feet three and four soft to 80 mm; Tie beam sound but for the west end; !List of fifteen repairs
            stones.1: Floor boards up, old pair under chaff; !Runner is a burr, 1.21 m, furrows still there
            sluice.5: Mortises for the sill, draw-bored; Grooves for the boards 55 mm; Rebated the posts; Sill fits; Pegged dry, taken apart; !Frame dry-fitted, marked, stacked
            shaft.13: Gudgeon in, 1.5 mm proud of the centre; Paper under two wings; Centre line by piano wire; North end runs true within 0.4 mm; Oak wedges half home
            shaft.14: Scarfed and lapped, one heat; Hoop one, weld rang well; Hoop two, 2 mm small, stretched
            sluice.6: Pinion cleaned, two teeth built up; Rack straightened cold; Gate boards cut
            stones.2: Old furrows chalked; Paint staff shows two high lands; Bills tempered again
            wheel.11: Fifteen an hour once the hand knows it; Split, shaved, turned; Twist in three, burnt
            wheel.10: Bevel 22 degrees both edges; Nails drawn, planer knives spared
            gear.4: Hornbeam is harder work than apple; Waxed and stacked
            """;

    /** What is done to a film on a Monday, a Tuesday, and so on; by Thursday it is cut. */
    private static final List<List<String>> EDITS = List.of(
            List.of("Selects", "Strung out", "Watched everything once"),
            List.of("Rough cut", "Strung out, too long by nine minutes", "Rough cut, voice missing"),
            List.of("Trimmed four minutes", "Picture lock", "Voice recorded in the van"),
            List.of("Sound, titles, captions", "Grade, export, watched through once", "Music out, water in"),
            List.of("Next week's cards copied and looked through"),
            List.of("Selects", "Looked for a beginning"),
            List.of("Selects"));

    private static final List<String> SHOPS = List.of(
            "Sharpening",
            "Swept, stove wood in",
            "Chisels and axes",
            "Trestle repaired",
            "Oiled the planer",
            "Sorted bolts",
            "First-aid case checked",
            "Gutters",
            "Tool racks",
            "Saw files");
    private static final List<String> DESKS = List.of(
            "Letters to supporters",
            "Books",
            "Upload, captions",
            "Orders and telephone",
            "Cards copied twice",
            "Plan for the week");

    private final Map<String, List<String>> waiting = new HashMap<>();
    private final Map<String, String> endings = new HashMap<>();
    private final Random random = new Random(7);

    Remarks() {
        for (String line : WORDS.split("\n")) {
            int colon = line.indexOf(": ");
            List<String> words = new ArrayList<>();
            for (String word : line.substring(colon + 2).split("; ")) {
                if (word.startsWith("!")) {
                    endings.put(line.substring(0, colon), word.substring(1));
                } else {
                    words.add(word);
                }
            }
            waiting.put(line.substring(0, colon), words);
        }
    }

    String task(String task, boolean ends) {
        if (ends) {
            return endings.getOrDefault(task, "");
        }
        List<String> words = waiting.getOrDefault(task, List.of());
        return words.isEmpty() || random.nextInt(10) < 6 ? "" : words.remove(0);
    }

    String camera(String task) {
        return random.nextInt(3) == 0
                ? List.of("Two angles", "Hands, close", "Time-lapse from the loft", "Sound only, ten minutes")
                        .get(random.nextInt(4))
                : "";
    }

    String edit(LocalDate day, String episode) {
        List<String> words = EDITS.get(day.getDayOfWeek().getValue() - 1);
        return some(words, episode.hashCode(), 3);
    }

    String shop(LocalDate day) {
        return some(SHOPS, day.getDayOfYear(), 7);
    }

    String office(LocalDate day) {
        return some(DESKS, day.getDayOfYear(), 6);
    }

    private String some(List<String> words, int place, int inTen) {
        return random.nextInt(10) < inTen ? words.get(Math.floorMod(place, words.size())) : "";
    }
}
