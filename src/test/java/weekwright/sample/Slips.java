package weekwright.sample;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rows of the sample's ledger that follow from nothing else, written by hand: date, amount, kind, account, payee, note. */
final class Slips {
    private static final String ROWS = """
            2025-12-16 |  -41.80 | other-cost   | bank | the builders' yard  | Gloves, dust masks, marker
            2025-12-19 |  -26.40 | other-cost   | tin  | the baker           | Soup for the people who held the tarpaulins
            2025-12-22 |  180.00 | other-income | bank | a neighbour         | Two days with the van and saw
            2026-01-09 | -212.00 | equipment    | bank | camera dealer       | Two drives for the film archive
            2026-01-14 |  -58.30 | other-cost   | bank | the builders' yard  | Screws, paint, lamp
            2026-01-22 |  240.00 | other-income | tin  | Jonas               | Byre door hung
            2026-02-05 |  -94.00 | other-cost   | bank | the chandler        | Face shields, leather apron for the white metal
            2026-02-13 |  320.00 | other-income | bank | the town school     | Two mornings of hand tools
            2026-02-27 |  -64.90 | other-cost   | bank | the bearing shop    | Saw chains and oil for the mill saw
            2026-03-09 | 1450.00 | own-money    | bank | Ilse                | Towards the planer
            2026-03-12 |-1450.00 | equipment    | bank | a joiner giving up  | Planer and thicknesser, second hand
            2026-03-20 |  410.00 | other-income | bank | a neighbour         | Milling, nine logs
            2026-03-24 |  -97.86 | other-cost   | bank | tool maker abroad   | Mortise chisel, 50 mm
            2026-04-02 |  -71.20 | other-cost   | bank | the builders' yard  | Line, pegs, buckets, lime goggles
            2026-04-17 |  640.00 | other-income | bank | a collector         | The old hay cart, sold
            2026-04-30 |  150.00 | other-income | tin  | visitors            | Open day, hat
            2026-05-11 |  -36.50 | other-cost   | tin  | the ironmonger      | Hinges, hooks
            2026-05-18 |   38.40 | refund       | bank | the builders' yard  | Four tarpaulin straps taken back
            2026-05-29 | -684.00 | tax          | bank | tax office          | Income tax for 2025
            2026-06-09 |  280.00 | other-income | bank | the town school     | Timber frame week, two mornings
            2026-06-16 |  -88.70 | other-cost   | bank | camera dealer       | Microphone cable, batteries
            2026-06-18 |-1480.00 | equipment    | bank | camera dealer       | Camera body and one lens, second hand
            2026-07-08 | -850.00 | equipment    | bank | the hire yard       | Scaffold tower, second hand, with rails
            2026-07-16 |  220.00 | other-income | bank | a neighbour         | Gate posts
            2026-07-24 |  -52.60 | other-cost   | bank | the builders' yard  | Brushes, mixing tub, sun cream
            2026-08-06 |-1060.00 | other-cost   | bank | garage              | Clutch and gearbox of the van
            2026-08-25 |  400.00 | own-money    | bank | Tomas               | Lent to ourselves for a thin month
            2026-09-04 |  260.00 | other-income | bank | a neighbour         | Stair repaired
            2026-09-15 |  -60.00 | other-cost   | tin  | the baker           | Bread and soup, dam day
            2026-09-21 |  -45.90 | other-cost   | bank | the timber merchant | Glue, sticks, end wax
            2026-10-01 | -120.00 | equipment    | bank | the hire yard       | Hoist looked over, new hook latch
            2026-10-07 |  390.00 | other-income | bank | the town school     | Autumn course, three mornings
            2026-10-19 |  -67.40 | other-cost   | bank | camera dealer       | Cable, card reader
            2026-11-03 |  -83.10 | other-cost   | bank | the builders' yard  | Fire bucket, extinguisher filled
            2026-11-14 |  170.00 | other-income | tin  | visitors            | Martinmas open day, hat
            2026-01-05 | -100.00 | transfer     | bank |                     | To the tin
            2026-01-05 |  100.00 | transfer     | tin  |                     | From the bank
            2026-09-14 | -100.00 | transfer     | bank |                     | To the tin
            2026-09-14 |  100.00 | transfer     | tin  |                     | From the bank
            2026-11-16 |  300.00 | transfer     | bank |                     | From the tin
            2026-11-16 | -300.00 | transfer     | tin  |                     | To the bank
            """;

    private Slips() {}

    /** Every slip as cells by column name. */
    static List<Map<String, String>> all() {
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : ROWS.split("\n")) {
            String[] parts = Arrays.stream(line.split("\\|")).map(String::strip).toArray(String[]::new);
            Map<String, String> cells = new HashMap<>();
            cells.put("date", parts[0]);
            cells.put("amount", parts[1]);
            cells.put("kind", parts[2]);
            cells.put("account", parts[3]);
            cells.put("payee", parts[4]);
            cells.put("note", parts[5]);
            if (parts[5].startsWith("The old hay cart") || parts[5].startsWith("Clutch")) {
                cells.put("once", "yes");
            }
            if (parts[4].equals("tool maker abroad")) {
                cells.put("foreign_amount", "84");
                cells.put("foreign_currency", "GBP");
                cells.put("rate", "1.165");
            }
            rows.add(cells);
        }
        return rows;
    }
}
