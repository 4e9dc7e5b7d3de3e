package weekwright.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import weekwright.base.Problem;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.Table;
import weekwright.files.ImportProject;
import weekwright.files.csv.PlainFiles;
import weekwright.files.csv.ProjectData;
import weekwright.files.csv.ReadResult;

/**
 * A small project without faults or remarks in plain files, in canonical form: two people and a helper build a footbridge
 * of oak. A test changes one thing and looks at what is said. Its today is 25 November 2026, a Wednesday.
 */
public final class PlainProject {
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    public static final Clock CLOCK = Clock.fixed(TODAY.atTime(9, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);

    /** One grey point, 8 bits, as PNG. */
    private static final byte[] PICTURE = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==");

    private final Path folder;

    private PlainProject(Path folder) {
        this.folder = folder;
    }

    /** Writes the files into a folder that is not there yet, or empty. */
    public static PlainProject in(Path folder) {
        PlainProject project = new PlainProject(folder);
        project.writeAll();
        ProjectData.tables().forEach(project::youngerColumns);
        return project;
    }

    /** Columns that records have got since their files were written here stand empty at the end, as an export writes them. */
    private void youngerColumns(Table<?> table) {
        String name = table.name().replace('_', '-') + ".csv";
        if (!Files.exists(folder.resolve(name))) {
            return;
        }
        String text = text(name);
        List<String> header = List.of(text.substring(0, text.indexOf("\r\n")).split(","));
        List<String> more = table.shape().names().stream()
                .filter(column -> !header.contains(column))
                .toList();
        if (!more.isEmpty()) {
            String rows =
                    text.substring(text.indexOf("\r\n")).replaceAll("(?<=.)\r\n", ",".repeat(more.size()) + "\r\n");
            bytes(
                    name,
                    (String.join(",", header) + "," + String.join(",", more) + rows).getBytes(StandardCharsets.UTF_8));
        }
    }

    public Path folder() {
        return folder;
    }

    /** Sets a file to lines, which get CRLF in CSV files and LF in others. */
    public PlainProject file(String name, String... lines) {
        String end = name.endsWith(".csv") ? "\r\n" : "\n";
        return bytes(name, (String.join(end, lines) + end).getBytes(StandardCharsets.UTF_8));
    }

    public PlainProject bytes(String name, byte[] bytes) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String text(String name) {
        try {
            return Files.readString(folder.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Replaces a text that stands exactly once in a file. */
    public PlainProject change(String name, String from, String to) {
        String text = text(name);
        int at = text.indexOf(from);
        if (at < 0 || text.indexOf(from, at + 1) >= 0) {
            throw new IllegalArgumentException("\"" + from + "\" does not stand exactly once in " + name);
        }
        return bytes(name, text.replace(from, to).getBytes(StandardCharsets.UTF_8));
    }

    /** Adds lines at the end of a CSV file. */
    public PlainProject add(String name, String... lines) {
        return bytes(name, (text(name) + String.join("\r\n", lines) + "\r\n").getBytes(StandardCharsets.UTF_8));
    }

    public PlainProject remove(String name) {
        try {
            Files.delete(folder.resolve(name));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Removes all but these files. */
    public PlainProject only(String... names) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                if (!List.of(names).contains(folder.relativize(file).toString())) {
                    Files.delete(file);
                }
            }
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads and checks the files as on {@link #TODAY}. */
    public ReadResult read() {
        return PlainFiles.read(folder, TODAY);
    }

    /** The whole texts of all faults. */
    public List<String> faults() {
        return read().faults().stream().map(Problem::text).toList();
    }

    /** The whole texts of all remarks. */
    public List<String> remarks() {
        return read().remarks().stream().map(Problem::text).toList();
    }

    /** Imports the files into a new project folder and opens it. */
    public Db imported(Path project) throws Exception {
        ImportProject.into(folder, new Folder(project), false, TODAY, CLOCK);
        return new Folder(project).open(CLOCK);
    }

    private void writeAll() {
        file(
                "project.toml",
                "format = 1",
                "name = \"The oak footbridge\"",
                "started = \"2026-01-05\"",
                "currency = \"EUR\"",
                "zone = \"Europe/Berlin\"",
                "reserve = \"500.00\"",
                "opening_cash = \"2000.00\"",
                "",
                "[publishing]",
                "weekday = \"friday\"",
                "first = \"2026-02-06\"",
                "target_minutes = 12.5",
                "edit_low = \"6\"",
                "edit_likely = \"10\"",
                "edit_high = \"15.5\"",
                "skip = [\"2026-12-25\"]",
                "",
                "[weather]",
                "lost = [0.4, 0.4, 0.3, 0.2, 0.1, 0.1, 0.1, 0.1, 0.2, 0.3, 0.4, 0.4]",
                "spell_days = 2.5",
                "",
                "[emergency]",
                "number = \"112\"",
                "",
                "[model]",
                "editing_first = true");
        file(
                "crew.csv",
                "id,name,trades,mon,tue,wed,thu,fri,sat,sun,pay,from,to,access,not_for,public_name",
                "ann,Ann,mason joiner camera edit,8,8,8,8,6,4,,,,,,,",
                "ben,Ben,joiner camera,4,4,4,4,4,4,,,,,,,",
                "cor,Cor,joiner,,,,,,6,,12.50,,,helper,melt fell,");
        file("crew-hours.csv", "crew,from,to,mon,tue,wed,thu,fri,sat,sun", "ben,2026-07-01,2026-08-31,8,8,8,8,8,,");
        file("days-off.csv", "crew,from,to,hours,reason", ",2026-12-24,2027-01-02,,winter");
        file("stopped.csv", "id,date,crew,hours,reason,task,equipment,note", "s1,2026-03-02,ann,8,weather,,,");
        file(
                "equipment.csv",
                "id,name,quantity,hazards,kept,ready_after,down_from,back_low,back_likely,back_high,inspect_by,value",
                "hoist,Chain hoist,,lift,,,,,,,2027-05-01,350.00",
                "trestle,Trestles,4,,yes,,,,,,,");
        file(
                "stages.csv",
                "id,name,order,weight,side,rough_low,rough_likely,rough_high,rough_cost,description",
                "piers,Stone piers,1,,,,,,,\"Two piers,\nof rubble in lime\"",
                "deck,Oak deck,2,2,,,,,,");
        file(
                "tasks.csv",
                "id,stage,title,kind,low,likely,high,pieces,learning,hands,least_hands,trades,company,company_reason,"
                        + "equipment,without,outdoors,season_from,season_to,not_before,booked,rebook_low,rebook_likely,"
                        + "rebook_high,one_go,priority,fill,camera,camera_extra,story_minutes,story_told,hazards,fail,"
                        + "redo,redo_of,left,left_on,aside_until,added,started,done,dropped",
                "piers.1,piers,Lay the piers,work,20,30,50,,,,,mason,,,,,yes,04-01,10-31,,,,,,,,,fixed,,8,,lime,,,,,,,,"
                        + "2026-05-04,2026-05-29,",
                "piers.2,piers,Let the lime cure,wait,21,28,35,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,2026-05-29,2026-06-26,",
                "deck.1,deck,Hew the beams,work,30,40,60,2,90,,,joiner,,,trestle:2,,,,,,,,,,,,,operator,,12.5,,dust,,,,"
                        + "12,2026-11-20,,,2026-11-02,,",
                "deck.2,deck,Lift the beams,work,,6,,,,,,joiner,,,hoist"
                        + " trestle:4,,yes,,,,,,,,yes,,,once,,6,,,,,,,,,,,,",
                "deck.3,deck,Lay the planks,work,10.5,16,24,12,,,,joiner,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,");
        file(
                "links.csv",
                "task,after,share,wait_low,wait_likely,wait_high",
                "piers.2,piers.1,,,,",
                "deck.2,piers.2,,,,",
                "deck.2,deck.1,1,,,",
                "deck.3,deck.2,,1,1,2");
        file(
                "hours.csv",
                "id,date,crew,people,task,episode,as,hours,pieces,spoiled,filmed,footage_minutes,note",
                "h1,2026-05-04,ann,,piers.1,,,8,,,yes,20,",
                "h2,2026-05-05,ann,,piers.1,,,6.33,,,,,",
                "h3,2026-11-02,ben,,deck.1,,hands,3.5,1,,,,",
                "h4,2026-11-03,ann,,,e2,edit,4,,,,,");
        file(
                "week.csv",
                "id,date,crew,task,episode,kind,hours,from,to,text,done",
                "w1,2026-11-26,ann,deck.1,,work,6,08:00,14:00,,");
        file("gatherings.csv", "id,date,hands,hours,come_share,cost,note", "g1,2027-04-10,6,5,0.8,60.00,Lifting day");
        file(
                "materials.csv",
                "id,task,lot,item,quantity,unit,waste,price_low,price_likely,price_high,source,stock,supplier,at_share,"
                        + "lead_low,lead_likely,lead_high,deposit,cancel_by,ordered,promised,received,value,credit,dimensions,"
                        + "price_from,price_on,thanked",
                "m1,deck.1,,oak beam,2,pc,,180,210,260,,,Sawyer,,14,21,40,30,,2026-09-01,2026-09-22,2026-09-25,,,,,,",
                "m2,deck.3,,oak plank,1.2,m3,10,700,850.5,1000,,,Sawyer,,14,21,40,30,,,,,,,12 × 50 × 400 mm × 5 m,the"
                        + " sawyer's list,2026-08-20,",
                "m3,deck.2,,old rope,20,m,,,,,given,rope,,,,,,,,,,,,Thanks in episode 3,,,,2026-02-08");
        file(
                "stock.csv",
                "id,item,species,quantity,unit,place,since,source,from,value,ready_low,ready_likely,ready_high,credit,note,"
                        + "moisture,meant_for,thanked",
                "rope,Hemp rope,,40,m,loft,2026-02-01,given,a neighbour,20.00,,,,,,dry,the hoist,2026-02-08");
        file(
                "ledger.csv",
                "id,date,amount,kind,account,gross,fee,once,stage,task,material,payee,foreign_amount,foreign_currency,"
                        + "rate,receipt,note",
                "l1,2026-03-05,92.00,payout,,100.00,8.00,,,,,friend,,,,,",
                "l2,2026-09-01,-126.00,material,,,,,,,m1,Sawyer,,,,beams.png,Deposit");
        file(
                "suppliers.csv",
                "id,name,telephone,email,remarks",
                "s.1,Sawyer,+55 (0)555 0100-3,saws@mill.example,\"Ring early\nnot on Mondays\"");
        file("regular.csv", "id,name,amount,spread,every,from,to", "rent,Rent,-120.00,,month,2026-01-01,");
        file(
                "pledge-levels.csv",
                "id,name,amount,charged,fee_percent,fee_fixed,declined,payout_days",
                "friend,Friend,5.00,month,8,0.30,3,5");
        file(
                "supporters.csv",
                "month,level,start,joined,left,surge",
                "2026-09,friend,20,4,1,",
                "2026-10,friend,23,9,2,yes",
                "2026-11,friend,30,1,0,");
        file(
                "episodes.csv",
                "id,number,slot,title,kind,minutes,edit_low,edit_likely,edit_high,editor,footage_complete,rough_cut,"
                        + "picture_lock,sound,cut,published,address,views,held_back",
                "e1,1,2026-06-05,Stone by stone,build,12,,,,ann,2026-05-29,,,,2026-06-03,2026-06-05,,240,",
                "e2,2,2026-12-04,Two beams,,,5,8,12,,,,,,,,,,",
                "sb,,,Round the tool chest,standby,9,,,,,2026-10-01,,,,2026-10-08,,,,");
        file("tells.csv", "episode,task,share", "e1,piers.1,", "e2,deck.1,0.5");
        file(
                "shots.csv",
                "id,episode,task,what,size,must,once,captured,clip,called_off,minutes,takes,missed",
                "sh1,e2,deck.1,Chips fly from the axe,close,yes,,,,,,,");
        file(
                "clips.csv",
                "id,date,card,clip,task,minutes,size,who,rating,remarks,time",
                "c1,2026-11-02,A,0007,deck.1,3.5,,ben,4,,");
        file(
                "bank-sources.csv",
                "id,name,account,encoding,divider,skip,date_order,decimals,date,payee,reference,amount,way,out,in,"
                        + "balance,currency,gross,fee,kind_in,kind_out,people",
                "bank,The bank,,utf-8,semicolon,1,dmy,comma,1,3,4,5,,,,6,,,,other-income,other-cost,");
        file(
                "bank-files.csv",
                "id,source,name,date,from,to,entered,left_out",
                "file.1,bank,May.csv,2026-06-01,2026-05-02,2026-05-29,12,1");
        file("closed-months.csv", "month,closed,who", "2026-05,2026-06-02,Ann");
        file(
                "statements.csv",
                "month,part,name,amount,gross,fee,hours,count",
                "2026-05,income,Friend,92.00,100.00,8.00,,",
                "2026-05,hours,hands,,,,41.5,",
                "2026-05,figure,episodes published,,,,,0",
                "2026-05,missing,\"2 costs have no receipt, as it was\",,,,,");
        file("skipped.csv", "date,reason", "2026-12-25,Christmas");
        file(
                "incidents.csv",
                "id,date,who,what,hurt,near_miss,changed",
                "i1,2026-05-12,ann,A stone slipped,,yes,Gloves");
        file("cautions.csv", "hazard,for,text", "lime,hands,Wash it off at once");
        file("segments.csv", "episode,place,title,minutes", "e1,1,The first board,4.5", "e1,2,\"The last, at dusk\",");
        file("music.csv", "episode,title,licence,source,until", "e1,Slow air,own recording,the mill loft,2027-12-31");
        file("releases.csv", "episode,who,got,note", "e1,The miller's aunt,2026-11-20,on paper", "e1,The weir,,");
        file("steps.csv", "episode,step,crew", "e1,cut,ben");
        file(
                "day-words.csv",
                "task,begins,stop_word,fallback,permits,running,places,cameras",
                "deck.2,09:00,Halt,the Monday after,,\"09:40 Wedges out\nTea\",Ann: at the winch,Wide from the loft");
        file("hazards-read.csv", "hazard,crew,date", "lime,ann,2026-05-04");
        file("levers.csv", "name,pulled", "A third leave,supporters=-33");
        file(
                "notes/2026-05-29-the-last-stone.md",
                "---",
                "id: n1",
                "title: The last stone",
                "date: 2026-05-29",
                "author: ann",
                "stage: piers",
                "episode: e1",
                "tasks: piers.1",
                "visible: everyone",
                "visible_from: 2026-06-05",
                "photo: last-stone.png | The last stone | A grey stone",
                "---",
                "",
                "We set the **last stone** at noon.",
                "",
                "Now the lime needs four weeks.");
        bytes("photos/last-stone.png", PICTURE);
        bytes("receipts/beams.png", PICTURE);
        file("drawing.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
    }
}
