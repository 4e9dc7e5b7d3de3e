package weekwright.sample;

import static weekwright.sample.Sheet.INK;
import static weekwright.sample.Sheet.LEAF;
import static weekwright.sample.Sheet.PRUSSIAN;
import static weekwright.sample.Sheet.THIN;
import static weekwright.sample.Sheet.WASH;
import static weekwright.sample.Sheet.path;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.Random;

/** The sample's pictures of stone, iron and water, drawn by code, and one receipt. */
final class DrawnWorks {
    private DrawnWorks() {}

    static void all(Path photos, Path receipts) {
        wingWall().save(photos.resolve("wing-wall.png"));
        pitPlan().save(photos.resolve("pit-plan.png"));
        bearingStones().save(photos.resolve("bearing-stones.png"));
        leat().save(photos.resolve("leat-section.png"));
        cracked().save(photos.resolve("cracked-wing.jpg"));
        bandsaw().save(photos.resolve("bandsaw.png"));
        runner().save(photos.resolve("runner-furrows.jpg"));
        hoopFire().save(photos.resolve("hoop-fire.jpg"));
        receipt().save(receipts.resolve("2026-11-13-hoop-iron.png"));
    }

    private static void course(
            Sheet sheet, Random random, double x1, double x2, double y, double height, boolean through) {
        double x = x1;
        while (x < x2 - 1) {
            double width = Math.min(x2 - x, through ? x2 - x : 60 + random.nextInt(70));
            if (x2 - x - width < 36) {
                width = x2 - x;
            }
            sheet.shape(INK, 1.8, through ? WASH : LEAF, new Rectangle2D.Double(x + 2, y + 2, width - 4, height - 4));
            x += width;
        }
    }

    private static Sheet wingWall() {
        Sheet sheet = new Sheet();
        Random random = new Random(9);
        Shape earth = path(560, 110, 890, 90, 890, 560, 560, 560);
        sheet.shape(THIN, 1, null, earth).hatch(THIN, 22, earth);
        for (int i = 0; i < 9; i++) {
            course(sheet, random, 270 + 8 * (9 - i) - 40, 560, 512 - 48 * i, 46, i == 3 || i == 6);
        }
        sheet.shape(INK, 2, LEAF, new Rectangle2D.Double(230, 560, 400, 36));
        sheet.circle(PRUSSIAN, 2.6, WASH, 590, 470, 20)
                .line(PRUSSIAN, 3, 570, 476, 250, 500)
                .line(PRUSSIAN, 1.6, 250, 500, 236, 556);
        for (int i = 0; i < 26; i++) {
            sheet.circle(THIN, 1, null, 572 + random.nextInt(60), 420 + random.nextInt(110), 4 + random.nextInt(4));
        }
        return sheet.line(PRUSSIAN, 2, 60, 556, 236, 556);
    }

    private static Sheet pitPlan() {
        Sheet sheet = new Sheet();
        Shape pit = path(200, 230, 760, 230, 760, 410, 200, 410);
        Shape wall = path(150, 170, 820, 170, 820, 230, 150, 230);
        Shape long2 = path(150, 410, 820, 410, 820, 470, 150, 470);
        sheet.shape(INK, 2.2, LEAF, wall)
                .hatch(THIN, 12, wall)
                .shape(INK, 2.2, LEAF, long2)
                .hatch(THIN, 12, long2);
        sheet.shape(INK, 2.2, null, pit);
        sheet.shape(PRUSSIAN, 2.4, WASH, new Rectangle2D.Double(440, 180, 90, 44))
                .shape(PRUSSIAN, 2.4, WASH, new Rectangle2D.Double(440, 416, 90, 44));
        sheet.centre(485, 100, 485, 540).dashed(PRUSSIAN, 280, 260, 690, 260).dashed(PRUSSIAN, 280, 380, 690, 380);
        for (int i = 0; i < 4; i++) {
            sheet.line(PRUSSIAN, 1.6, 70, 290 + 20 * i, 180, 290 + 20 * i)
                    .line(PRUSSIAN, 1.6, 780, 290 + 20 * i, 890, 290 + 20 * i);
        }
        return sheet.measure(200, 760, 560, 410);
    }

    private static Sheet bearingStones() {
        Sheet sheet = new Sheet();
        Random random = new Random(3);
        for (double x : new double[] {110, 650}) {
            for (int i = 0; i < 4; i++) {
                course(sheet, random, x, x + 200, 540 - 44 * i, 42, false);
            }
            Shape stone = path(x + 10, 310, x + 190, 310, x + 190, 406, x + 10, 406);
            sheet.shape(PRUSSIAN, 2.6, WASH, stone).hatch(PRUSSIAN, 26, stone);
            sheet.shape(INK, 2.2, LEAF, path(x + 62, 310, x + 138, 310, x + 128, 268, x + 72, 268))
                    .arc(INK, 2.2, x + 100, 268, 26, 180, 180);
        }
        sheet.line(INK, 2, 150, 300, 812, 300)
                .shape(INK, 1.8, LEAF, new Rectangle2D.Double(440, 284, 84, 16))
                .circle(PRUSSIAN, 1.6, WASH, 482, 292, 5);
        return sheet.centre(210, 220, 750, 220).measure(210, 750, 160, 240);
    }

    private static Sheet leat() {
        Sheet sheet = new Sheet();
        Random random = new Random(21);
        Shape ground = path(60, 220, 330, 220, 360, 420, 640, 420, 650, 200, 900, 180, 900, 570, 60, 570);
        sheet.shape(INK, 2, LEAF, ground).hatch(THIN, 26, ground);
        for (int i = 0; i < 5; i++) {
            course(sheet, random, 640, 740 - 6 * i, 390 - 42 * i, 40, i == 2);
        }
        sheet.outline(PRUSSIAN, 2, WASH, 342, 300, 640, 300, 640, 420, 360, 420);
        sheet.line(PRUSSIAN, 3, 342, 300, 640, 300);
        sheet.outline(INK, 1.6, THIN, 356, 420, 640, 420, 640, 446, 352, 446);
        return sheet.measure(352, 640, 510, 446);
    }

    private static Sheet cracked() {
        Sheet sheet = new Sheet();
        sheet.outline(INK, 2.6, LEAF, 140, 200, 560, 200, 560, 270, 820, 270, 820, 370, 560, 370, 560, 440, 140, 440);
        sheet.line(INK, 1.6, 140, 290, 560, 290).line(INK, 1.6, 140, 350, 560, 350);
        double[] x = {330, 338, 331, 346, 340, 352, 347, 360};
        for (int i = 0; i < 7; i++) {
            sheet.line(PRUSSIAN, 3.4, x[i], 200 + 13 * i, x[i + 1], 213 + 13 * i);
            sheet.line(PRUSSIAN, 1, x[i] + 5, 204 + 13 * i, x[i + 1] + 12, 214 + 13 * i);
        }
        return sheet.circle(PRUSSIAN, 1.6, null, 344, 246, 84)
                .centre(110, 320, 860, 320)
                .measure(330, 360, 140, 200);
    }

    private static Sheet bandsaw() {
        Sheet sheet = new Sheet();
        sheet.outline(INK, 2.4, LEAF, 560, 560, 560, 90, 640, 70, 680, 110, 680, 560);
        for (double y : new double[] {170, 480}) {
            sheet.circle(INK, 2.6, WASH, 470, y, 110)
                    .circle(PRUSSIAN, 2, LEAF, 470, y, 98)
                    .circle(INK, 2, WASH, 470, y, 20);
            for (int i = 0; i < 6; i++) {
                double angle = Math.toRadians(60 * i + 12);
                sheet.line(
                        PRUSSIAN,
                        5,
                        470 + 20 * Math.cos(angle),
                        y + 20 * Math.sin(angle),
                        470 + 98 * Math.cos(angle),
                        y + 98 * Math.sin(angle));
            }
        }
        sheet.line(INK, 2.6, 360, 170, 360, 480).line(INK, 1.4, 580, 170, 580, 480);
        sheet.shape(INK, 2.4, LEAF, new Rectangle2D.Double(220, 330, 320, 20)).line(INK, 2, 470, 350, 520, 560);
        return sheet.line(THIN, 1.4, 120, 591, 860, 591).line(INK, 3, 330, 590, 720, 590);
    }

    private static Sheet runner() {
        Sheet sheet = new Sheet();
        sheet.circle(INK, 2.8, LEAF, 480, 320, 256).circle(INK, 2.4, Sheet.PAPER, 480, 320, 48);
        for (int harp = 0; harp < 10; harp++) {
            for (int furrow = 0; furrow < 4; furrow++) {
                double angle = Math.toRadians(36 * harp);
                double offset = 26 + 26 * furrow;
                double along = Math.sqrt(Math.max(0, 254 * 254 - offset * offset));
                double from = 52 + 44 * furrow;
                double x1 = 480 + from * Math.cos(angle) - offset * Math.sin(angle);
                double y1 = 320 + from * Math.sin(angle) + offset * Math.cos(angle);
                double x2 = 480 + along * Math.cos(angle) - offset * Math.sin(angle);
                double y2 = 320 + along * Math.sin(angle) + offset * Math.cos(angle);
                sheet.line(PRUSSIAN, furrow == 0 ? 3.4 : 2, x1, y1, x2, y2);
            }
        }
        return sheet.centre(180, 320, 780, 320).centre(480, 40, 480, 600);
    }

    private static Sheet hoopFire() {
        Sheet sheet = new Sheet();
        Random random = new Random(31);
        sheet.outline(INK, 2.4, LEAF, 120, 470, 520, 470, 560, 570, 80, 570);
        for (int i = 0; i < 60; i++) {
            sheet.circle(THIN, 1, null, 150 + random.nextInt(350), 448 + random.nextInt(26), 5 + random.nextInt(6));
        }
        sheet.circle(PRUSSIAN, 7, null, 320, 400, 90).circle(INK, 1.4, null, 320, 400, 80);
        for (int i = 0; i < 7; i++) {
            sheet.arc(THIN, 1.6, 210 + 34 * i, 300 - 9 * (i % 3), 26, 60, 150);
        }
        sheet.outline(INK, 2.4, WASH, 640, 400, 860, 400, 840, 570, 660, 570).line(PRUSSIAN, 2.4, 648, 428, 852, 428);
        return sheet.line(INK, 4, 410, 390, 620, 250)
                .line(INK, 4, 404, 380, 606, 236)
                .line(THIN, 1.2, 40, 571, 920, 571);
    }

    private static Sheet receipt() {
        Sheet sheet = new Sheet();
        sheet.shape(INK, 1.6, LEAF, new Rectangle2D.Double(300, 60, 360, 520));
        Random random = new Random(13);
        for (int row = 0; row < 13; row++) {
            double y = 120 + 30 * row;
            sheet.line(THIN, 4, 330, y, 430 + random.nextInt(120), y).line(INK, 4, 580, y, 624, y);
        }
        sheet.line(INK, 1.4, 560, 520, 630, 520).line(PRUSSIAN, 6, 560, 540, 630, 540);
        return sheet.circle(PRUSSIAN, 2, null, 380, 530, 34);
    }
}
