package weekwright.sample;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * A sheet of paper, 960 by 640, on which the sample's line drawings are made in ink and Prussian blue. No letters are
 * drawn, so that the pictures need no fonts. Lengths are pixels, angles degrees, y runs down.
 */
final class Sheet {
    static final int WIDTH = 960;
    static final int HEIGHT = 640;
    static final Color PAPER = new Color(0xf0f2ec);
    static final Color INK = new Color(0x1b2226);
    static final Color THIN = new Color(0x6f7a79);
    static final Color PRUSSIAN = new Color(0x174a73);
    static final Color WASH = new Color(0xc9d9e2);
    static final Color LEAF = new Color(0xfafbf7);

    private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    private final Graphics2D pen = image.createGraphics();

    Sheet() {
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(PAPER);
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        line(THIN, 1, 24, 24, 936, 24).line(THIN, 1, 24, 616, 936, 616);
        line(THIN, 1, 24, 24, 24, 616).line(THIN, 1, 936, 24, 936, 616);
    }

    Sheet shape(Color edge, double width, Color inside, Shape shape) {
        if (inside != null) {
            pen.setColor(inside);
            pen.fill(shape);
        }
        pen.setColor(edge);
        pen.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(shape);
        return this;
    }

    Sheet line(Color color, double width, double x1, double y1, double x2, double y2) {
        return shape(color, width, null, new Line2D.Double(x1, y1, x2, y2));
    }

    /** A closed outline through the corners x, y, x, y … */
    Sheet outline(Color edge, double width, Color inside, double... corners) {
        return shape(edge, width, inside, path(corners));
    }

    Sheet circle(Color edge, double width, Color inside, double x, double y, double radius) {
        return shape(edge, width, inside, new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    Sheet arc(Color color, double width, double x, double y, double radius, double from, double extent) {
        return shape(
                color,
                width,
                null,
                new Arc2D.Double(x - radius, y - radius, 2 * radius, 2 * radius, from, extent, Arc2D.OPEN));
    }

    /** A regular figure of so many corners, the first one at the angle {@code turn}. */
    Sheet regular(Color edge, double width, Color inside, int corners, double x, double y, double radius, double turn) {
        double[] points = new double[2 * corners];
        for (int i = 0; i < corners; i++) {
            double angle = Math.toRadians(turn + 360.0 * i / corners);
            points[2 * i] = x + radius * Math.cos(angle);
            points[2 * i + 1] = y + radius * Math.sin(angle);
        }
        return outline(edge, width, inside, points);
    }

    /** Parallel lines at 45 degrees inside a shape, as a cut face is drawn. */
    Sheet hatch(Color color, double gap, Shape inside) {
        Shape clip = pen.getClip();
        pen.clip(inside);
        for (double x = -HEIGHT; x < WIDTH; x += gap) {
            line(color, 1, x, HEIGHT, x + HEIGHT, 0);
        }
        pen.setClip(clip);
        return this;
    }

    /** Wavering grain along x inside a shape; seeded. */
    Sheet grain(Color color, long seed, double gap, Shape inside) {
        Random random = new Random(seed);
        Shape clip = pen.getClip();
        pen.clip(inside);
        for (double y = inside.getBounds().getMinY();
                y < inside.getBounds().getMaxY();
                y += gap * (.6 + random.nextDouble())) {
            Path2D fibre = new Path2D.Double();
            fibre.moveTo(inside.getBounds().getMinX(), y);
            for (double x = inside.getBounds().getMinX(); x < inside.getBounds().getMaxX(); x += 60) {
                double sway = 3 * random.nextGaussian();
                fibre.quadTo(x + 30, y + sway, x + 60, y + sway / 2);
            }
            shape(color, .8, null, fibre);
        }
        pen.setClip(clip);
        return this;
    }

    /** A dimension line with oblique ends and its two witness lines, for a level stretch. */
    Sheet measure(double x1, double x2, double y, double from) {
        line(THIN, 1, x1, from, x1, y + 8 * Math.signum(y - from))
                .line(THIN, 1, x2, from, x2, y + 8 * Math.signum(y - from));
        line(INK, 1, x1, y, x2, y);
        return line(INK, 1.6, x1 - 6, y + 6, x1 + 6, y - 6).line(INK, 1.6, x2 - 6, y + 6, x2 + 6, y - 6);
    }

    /** A centre line, long and short. */
    Sheet centre(double x1, double y1, double x2, double y2) {
        pen.setColor(PRUSSIAN);
        pen.setStroke(
                new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, new float[] {18, 5, 4, 5}, 0));
        pen.draw(new Line2D.Double(x1, y1, x2, y2));
        return this;
    }

    Sheet dashed(Color color, double x1, double y1, double x2, double y2) {
        pen.setColor(color);
        pen.setStroke(new BasicStroke(1.3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, new float[] {7, 5}, 0));
        pen.draw(new Line2D.Double(x1, y1, x2, y2));
        return this;
    }

    static Path2D path(double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners[0], corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(corners[i], corners[i + 1]);
        }
        path.closePath();
        return path;
    }

    static Shape turned(Shape shape, double degrees, double x, double y) {
        return AffineTransform.getRotateInstance(Math.toRadians(degrees), x, y).createTransformedShape(shape);
    }

    /** Writes the sheet; the ending of the name, png or jpg, is the form. */
    void save(Path file) {
        pen.dispose();
        String name = file.getFileName().toString();
        try {
            if (!ImageIO.write(image, name.substring(name.lastIndexOf('.') + 1), file.toFile())) {
                throw new IOException("No writer for " + name);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
