package weekwright.sample;

import static weekwright.sample.Sheet.INK;
import static weekwright.sample.Sheet.LEAF;
import static weekwright.sample.Sheet.PRUSSIAN;
import static weekwright.sample.Sheet.THIN;
import static weekwright.sample.Sheet.WASH;
import static weekwright.sample.Sheet.path;
import static weekwright.sample.Sheet.turned;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;

/** The sample's pictures of timber: joints, shaft, wheel, cogs and pegs, drawn by code. */
final class DrawnWood {
    private DrawnWood() {}

    static void all(Path photos) {
        sixteenSides().save(photos.resolve("sixteen-sides.png"));
        armMortise().save(photos.resolve("arm-mortise.png"));
        shaftWithHoops().save(photos.resolve("shaft-hoops.png"));
        gudgeonCross().save(photos.resolve("gudgeon-cross.png"));
        rimScarf().save(photos.resolve("rim-scarf.png"));
        wheel().save(photos.resolve("wheel-full-size.jpg"));
        bucket().save(photos.resolve("bucket-section.png"));
        cogs().save(photos.resolve("cog-blanks.png"));
        pegs().save(photos.resolve("pegs.png"));
        stack().save(photos.resolve("stack-in-stick.png"));
        sluiceFrame().save(photos.resolve("sluice-frame.png"));
        hewnLog().save(photos.resolve("hewn-log.jpg"));
    }

    private static Sheet sixteenSides() {
        Sheet sheet = new Sheet();
        for (int i = 0; i < 3; i++) {
            double x = 190 + 290 * i;
            sheet.circle(THIN, 1, LEAF, x, 320, 142);
            for (int ring = 1; ring < 8; ring++) {
                sheet.circle(THIN, .6, null, x + 4, 322, 12 * ring);
            }
            sheet.regular(INK, 1.2, null, 4, x, 320, 142, 45);
            if (i > 0) {
                sheet.regular(PRUSSIAN, i == 1 ? 3 : 1.2, null, 8, x, 320, 108.7, 22.5);
            }
            if (i > 1) {
                sheet.regular(PRUSSIAN, 3, null, 16, x, 320, 102.4, 11.25);
            }
            sheet.centre(x - 160, 320, x + 160, 320).centre(x, 160, x, 480);
        }
        return sheet.measure(670, 870, 540, 420);
    }

    private static Sheet armMortise() {
        Sheet sheet = new Sheet();
        Shape shaft = new Rectangle2D.Double(90, 190, 780, 260);
        sheet.shape(INK, 2.4, LEAF, shaft).grain(THIN, 1, 15, shaft);
        Shape hole = path(430, 190, 540, 190, 556, 450, 414, 450);
        sheet.shape(INK, 2.4, Sheet.PAPER, hole);
        Shape arm = path(432, 70, 538, 70, 538, 570, 432, 570);
        sheet.shape(PRUSSIAN, 2.4, WASH, arm).grain(PRUSSIAN, 2, 300, arm);
        sheet.outline(INK, 2, LEAF, 538, 330, 556, 450, 560, 500, 538, 500)
                .outline(INK, 2, LEAF, 432, 330, 414, 450, 410, 500, 432, 500);
        sheet.centre(485, 50, 485, 590).measure(430, 540, 150, 190).measure(414, 556, 540, 450);
        return sheet;
    }

    private static Sheet shaftWithHoops() {
        Sheet sheet = new Sheet();
        Shape shaft = new Rectangle2D.Double(120, 250, 720, 110);
        sheet.shape(INK, 2.4, LEAF, shaft);
        for (int i = 1; i < 5; i++) {
            sheet.line(THIN, 1, 120, 250 + 22 * i + (i < 3 ? -4 : 4), 840, 250 + 22 * i + (i < 3 ? -4 : 4));
        }
        for (double x : new double[] {128, 164, 200, 742, 778, 814}) {
            sheet.shape(PRUSSIAN, 2, WASH, new Rectangle2D.Double(x, 245, 18, 120));
        }
        for (double x : new double[] {300, 350, 400, 560, 610, 660}) {
            sheet.shape(INK, 1.6, Sheet.PAPER, new Rectangle2D.Double(x, 285, 24, 40));
        }
        sheet.shape(INK, 2.4, WASH, new Rectangle2D.Double(52, 288, 68, 34))
                .shape(INK, 2.4, WASH, new Rectangle2D.Double(840, 288, 68, 34));
        sheet.centre(40, 305, 920, 305).measure(120, 840, 460, 360).measure(128, 218, 200, 245);
        for (double x : new double[] {230, 700}) {
            sheet.outline(INK, 2, null, x - 40, 520, x - 14, 362, x + 14, 362, x + 40, 520)
                    .line(INK, 2, x - 30, 460, x + 30, 460);
        }
        return sheet;
    }

    private static Sheet gudgeonCross() {
        Sheet sheet = new Sheet();
        sheet.regular(INK, 2.6, LEAF, 16, 320, 320, 220, 11.25);
        for (int ring = 1; ring < 10; ring++) {
            sheet.circle(THIN, .7, null, 326, 316, 20 * ring);
        }
        sheet.circle(PRUSSIAN, 2, null, 320, 320, 232);
        for (int turn = 0; turn < 4; turn++) {
            Shape wing = turned(new Rectangle2D.Double(320, 304, 190, 32), 90 * turn, 320, 320);
            sheet.shape(PRUSSIAN, 2.4, WASH, wing);
            for (int side : new int[] {-26, 26}) {
                sheet.shape(
                        INK,
                        1.4,
                        Sheet.PAPER,
                        turned(new Rectangle2D.Double(420, 320 + side - 7, 46, 14), 90 * turn, 320, 320));
            }
        }
        sheet.circle(PRUSSIAN, 3, WASH, 320, 320, 44).circle(INK, 1.4, null, 320, 320, 4);
        sheet.centre(70, 320, 570, 320).centre(320, 70, 320, 570);
        sheet.outline(
                PRUSSIAN, 2.4, WASH, 660, 230, 860, 230, 860, 300, 900, 300, 900, 340, 860, 340, 860, 410, 660, 410);
        sheet.line(PRUSSIAN, 1.4, 660, 300, 860, 300)
                .line(PRUSSIAN, 1.4, 660, 340, 860, 340)
                .centre(640, 320, 920, 320);
        return sheet.measure(660, 860, 470, 410);
    }

    private static Sheet rimScarf() {
        Sheet sheet = new Sheet();
        Shape left = path(70, 240, 380, 240, 396, 268, 590, 350, 606, 378, 606, 400, 70, 400);
        Shape right = path(890, 240, 380, 240, 396, 268, 590, 350, 606, 378, 606, 400, 890, 400);
        sheet.shape(INK, 2.4, LEAF, left).grain(THIN, 5, 14, left);
        sheet.shape(PRUSSIAN, 2.6, WASH, right).grain(PRUSSIAN, 6, 22, right);
        for (double[] peg : new double[][] {{430, 262}, {500, 330}, {470, 290}, {550, 352}}) {
            sheet.circle(INK, 2, Sheet.PAPER, peg[0] + 10, peg[1] + 20, 10);
        }
        return sheet.measure(380, 606, 180, 240).measure(70, 890, 480, 400);
    }

    private static Sheet wheel() {
        Sheet sheet = new Sheet();
        double x = 480;
        double y = 320;
        sheet.circle(INK, 2.4, LEAF, x, y, 262)
                .circle(INK, 2.4, Sheet.PAPER, x, y, 214)
                .circle(PRUSSIAN, 1.6, null, x, y, 222);
        for (int i = 0; i < 36; i++) {
            double angle = Math.toRadians(10 * i);
            double on = Math.toRadians(10 * i + 13);
            sheet.line(
                    PRUSSIAN,
                    1.8,
                    x + 222 * Math.cos(angle),
                    y + 222 * Math.sin(angle),
                    x + 240 * Math.cos(angle),
                    y + 240 * Math.sin(angle));
            sheet.line(
                    PRUSSIAN,
                    1.8,
                    x + 240 * Math.cos(angle),
                    y + 240 * Math.sin(angle),
                    x + 262 * Math.cos(on),
                    y + 262 * Math.sin(on));
        }
        for (int i = 0; i < 3; i++) {
            sheet.shape(INK, 2, LEAF, turned(new Rectangle2D.Double(x - 238, y - 13, 476, 26), 60 * i + 15, x, y));
        }
        sheet.regular(INK, 2.6, WASH, 16, x, y, 36, 11.25).circle(PRUSSIAN, 2.4, LEAF, x, y, 8);
        return sheet.centre(190, y, 770, y).centre(x, 40, x, 600);
    }

    private static Sheet bucket() {
        Sheet sheet = new Sheet();
        sheet.arc(INK, 2.4, 480, 1500, 1300, 72, 36)
                .arc(INK, 2.4, 480, 1500, 1060, 72, 36)
                .arc(THIN, 1.4, 480, 1500, 1080, 72, 36);
        for (int i = -2; i < 2; i++) {
            double angle = Math.toRadians(-90 + 7.5 * i + 1.5);
            double next = Math.toRadians(-90 + 7.5 * i + 7.2);
            double cx = 480;
            double cy = 1500;
            sheet.line(
                    PRUSSIAN,
                    9,
                    cx + 1080 * Math.cos(angle),
                    cy + 1080 * Math.sin(angle),
                    cx + 1160 * Math.cos(angle),
                    cy + 1160 * Math.sin(angle));
            sheet.line(
                    PRUSSIAN,
                    9,
                    cx + 1160 * Math.cos(angle),
                    cy + 1160 * Math.sin(angle),
                    cx + 1298 * Math.cos(next),
                    cy + 1298 * Math.sin(next));
        }
        for (int i = 0; i < 4; i++) {
            sheet.line(THIN, 1.2, 150 + 14 * i, 70 + 16 * i, 330 + 14 * i, 78 + 16 * i);
        }
        return sheet.measure(446, 614, 560, 430);
    }

    private static Sheet cogs() {
        Sheet sheet = new Sheet();
        for (int i = 0; i < 5; i++) {
            double x = 110 + 160 * i;
            Shape head = path(x, 150, x + 96, 150, x + 96, 300, x, 300);
            Shape shank = path(x + 20, 300, x + 76, 300, x + 66, 500, x + 30, 500);
            sheet.shape(i < 2 ? THIN : PRUSSIAN, 2.2, i < 2 ? LEAF : WASH, head).shape(INK, 2.2, LEAF, shank);
            sheet.grain(THIN, i, 30, shank);
            if (i > 1) {
                sheet.outline(
                        PRUSSIAN, 2.6, LEAF, x + 6, 300, x + 14, 190, x + 34, 150, x + 62, 150, x + 82, 190, x + 90,
                        300);
            }
            if (i > 2) {
                sheet.circle(INK, 2, Sheet.PAPER, x + 48, 470, 7);
            }
        }
        return sheet.measure(750, 846, 120, 150);
    }

    private static Sheet pegs() {
        Sheet sheet = new Sheet();
        for (int i = 0; i < 10; i++) {
            double y = 90 + 48 * i;
            Shape peg = path(150, y, 640 + 12 * (i % 3), y + 3, 760, y + 11, 760, y + 17, 640, y + 25, 150, y + 28);
            sheet.shape(i == 6 ? THIN : INK, 1.8, i == 6 ? Sheet.PAPER : LEAF, peg)
                    .grain(THIN, 40 + i, 9, peg);
            sheet.shape(PRUSSIAN, 1.6, WASH, new Ellipse2D.Double(143, y, 14, 28));
        }
        return sheet.line(THIN, 1.4, 640, 60, 640, 590);
    }

    private static Sheet stack() {
        Sheet sheet = new Sheet();
        for (int layer = 0; layer < 7; layer++) {
            double y = 480 - 46 * layer;
            for (double x = 190; x < 800; x += 140) {
                sheet.shape(PRUSSIAN, 1.4, WASH, new Rectangle2D.Double(x, y - 12, 22, 12));
            }
            Shape board = new Rectangle2D.Double(140, y - 46, 680, 34);
            sheet.shape(INK, 2, LEAF, board).grain(THIN, layer, 11, board);
        }
        for (double x = 220; x < 800; x += 240) {
            sheet.shape(INK, 2, THIN, new Rectangle2D.Double(x, 480, 60, 50));
        }
        return sheet.line(INK, 3, 110, 128, 860, 104)
                .line(INK, 1.4, 110, 136, 860, 112)
                .line(THIN, 1.2, 40, 531, 920, 531);
    }

    private static Sheet sluiceFrame() {
        Sheet sheet = new Sheet();
        for (double x : new double[] {270, 630}) {
            Shape post = new Rectangle2D.Double(x, 90, 60, 440);
            sheet.shape(INK, 2.4, LEAF, post)
                    .line(PRUSSIAN, 1.6, x + (x < 400 ? 46 : 14), 90, x + (x < 400 ? 46 : 14), 530);
        }
        for (double y : new double[] {110, 500}) {
            Shape beam = new Rectangle2D.Double(220, y, 520, 54);
            sheet.shape(INK, 2.4, LEAF, beam).grain(THIN, (long) y, 13, beam);
            for (double x : new double[] {288, 312, 648, 672}) {
                sheet.circle(INK, 1.6, Sheet.PAPER, x, y + 27, 6);
            }
        }
        for (int i = 0; i < 4; i++) {
            sheet.shape(PRUSSIAN, 1.8, WASH, new Rectangle2D.Double(318, 300 + 50 * i, 324, 48));
        }
        sheet.shape(INK, 2, LEAF, new Rectangle2D.Double(466, 60, 28, 400));
        for (double y = 70; y < 290; y += 14) {
            sheet.line(INK, 1.6, 466, y, 480, y + 5);
        }
        return sheet.circle(PRUSSIAN, 2.4, WASH, 440, 150, 26).measure(330, 630, 580, 554);
    }

    private static Sheet hewnLog() {
        Sheet sheet = new Sheet();
        Shape log = path(160, 250, 840, 210, 840, 400, 160, 440);
        sheet.shape(INK, 2.4, LEAF, log).grain(THIN, 12, 12, log);
        sheet.outline(INK, 2.4, WASH, 70, 262, 160, 250, 160, 440, 70, 430);
        for (int ring = 1; ring < 6; ring++) {
            sheet.shape(THIN, .8, null, new Ellipse2D.Double(112 - 7 * ring, 348 - 15 * ring, 14 * ring, 30 * ring));
        }
        for (double x = 220; x < 820; x += 75) {
            sheet.line(PRUSSIAN, 2, x, 248 - (x - 160) / 17, x + 34, 300 - (x - 160) / 17);
        }
        for (double x : new double[] {260, 690}) {
            sheet.outline(INK, 2, null, x - 50, 560, x - 20, 430, x + 20, 430, x + 50, 560)
                    .line(INK, 2, x - 40, 510, x + 40, 510);
        }
        return sheet.line(THIN, 1.2, 40, 561, 920, 561);
    }
}
