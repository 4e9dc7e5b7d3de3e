package weekwright.files.picture;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ComponentColorModel;
import java.awt.image.ComponentSampleModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;

/**
 * A picture as plain numbers.
 *
 * @param bands 1 grey, 2 grey and cover, 3 red green blue, 4 with cover
 * @param samples 0 to 255, row by row, a pixel's bands together
 * @param space what the colours mean; grey counts as the screen's own
 */
record Pixels(int width, int height, int bands, int[] samples, ColorSpace space) {

    /**
     * Shrinks a picture as it is read, each pixel the mean of the area that it covers; exact, in whole numbers.
     *
     * @param most of the longer side; a smaller picture stays as it is
     */
    static Pixels reduced(BufferedImage image, int most) {
        boolean plain = image.getColorModel() instanceof ComponentColorModel;
        int bands =
                plain ? image.getRaster().getNumBands() : image.getColorModel().hasAlpha() ? 4 : 3;
        int deeper = plain ? Math.max(0, image.getColorModel().getComponentSize(0) - 8) : 0;
        Raster raster = image.getRaster();
        int[] packed = new int[image.getWidth()];
        return reduced(
                new Rows(image.getWidth(), image.getHeight(), bands, (y, row) -> {
                    if (plain) {
                        raster.getPixels(0, y, image.getWidth(), 1, row);
                    } else {
                        image.getRGB(0, y, image.getWidth(), 1, packed, 0, image.getWidth());
                        unpack(packed, bands, row);
                    }
                    for (int i = 0; deeper > 0 && i < row.length; i++) {
                        row[i] >>= deeper;
                    }
                }),
                most,
                plain ? image.getColorModel().getColorSpace() : ColorSpace.getInstance(ColorSpace.CS_sRGB));
    }

    private interface RowReader {
        void read(int y, int[] row);
    }

    private record Rows(int width, int height, int bands, RowReader reader) {}

    private static void unpack(int[] packed, int bands, int[] row) {
        for (int x = 0; x < packed.length; x++) {
            row[x * bands] = packed[x] >> 16 & 0xff;
            row[x * bands + 1] = packed[x] >> 8 & 0xff;
            row[x * bands + 2] = packed[x] & 0xff;
            if (bands == 4) {
                row[x * bands + 3] = packed[x] >>> 24;
            }
        }
    }

    /** The same smaller, if it is larger. */
    Pixels reduced(int most) {
        int stride = width * bands;
        return reduced(
                new Rows(width, height, bands, (y, row) -> System.arraycopy(samples, y * stride, row, 0, stride)),
                most,
                space);
    }

    private static Pixels reduced(Rows from, int most, ColorSpace space) {
        long longest = Math.max(from.width(), from.height());
        int width = longest <= most ? from.width() : (int) Math.max(1, from.width() * (long) most / longest);
        int height = longest <= most ? from.height() : (int) Math.max(1, from.height() * (long) most / longest);
        int bands = from.bands();
        int[] into = new int[width * height * bands];
        int[] row = new int[from.width() * bands];
        if (longest <= most) {
            for (int y = 0; y < height; y++) {
                from.reader().read(y, row);
                System.arraycopy(row, 0, into, y * row.length, row.length);
            }
            return new Pixels(width, height, bands, into, space);
        }
        long[] across = new long[width * bands];
        long[] sum = new long[width * bands];
        long area = (long) from.width() * from.height();
        int filled = 0;
        // a source row covers [y * height, (y + 1) * height) where a row of the outcome covers from.height()
        for (int y = 0; y < from.height(); y++) {
            from.reader().read(y, row);
            narrow(row, from.width(), bands, width, across);
            long top = (long) y * height;
            long end = (long) (filled + 1) * from.height();
            long within = Math.min(top + height, end) - top;
            for (int i = 0; i < sum.length; i++) {
                sum[i] += across[i] * within;
            }
            if (top + height >= end) {
                for (int i = 0; i < sum.length; i++) {
                    into[filled * sum.length + i] = (int) ((sum[i] + area / 2) / area);
                    sum[i] = across[i] * (height - within);
                }
                filled++;
            }
        }
        return new Pixels(width, height, bands, into, space);
    }

    private static void narrow(int[] row, int width, int bands, int into, long[] across) {
        java.util.Arrays.fill(across, 0);
        int place = 0;
        for (int x = 0; x < width; x++) {
            long left = (long) x * into;
            long end = (long) (place + 1) * width;
            long within = Math.min(left + into, end) - left;
            for (int band = 0; band < bands; band++) {
                across[place * bands + band] += row[x * bands + band] * within;
            }
            if (left + into >= end) {
                place++;
                for (int band = 0; band < bands && place < into; band++) {
                    across[place * bands + band] += row[x * bands + band] * (into - within);
                }
            }
        }
    }

    /** Upright, from one of the eight orientations of Exif. */
    Pixels turned(int orientation) {
        if (orientation == 1) {
            return this;
        }
        boolean swapped = orientation >= 5;
        int newWidth = swapped ? height : width;
        int newHeight = swapped ? width : height;
        int[] into = new int[samples.length];
        for (int y = 0; y < newHeight; y++) {
            for (int x = 0; x < newWidth; x++) {
                int fromX = switch (orientation) {
                    case 2, 3 -> width - 1 - x;
                    case 4 -> x;
                    case 5, 6 -> y;
                    default -> width - 1 - y;
                };
                int fromY = switch (orientation) {
                    case 2 -> y;
                    case 3, 4 -> height - 1 - y;
                    case 5, 8 -> x;
                    default -> height - 1 - x;
                };
                System.arraycopy(samples, (fromY * width + fromX) * bands, into, (y * newWidth + x) * bands, bands);
            }
        }
        return new Pixels(newWidth, newHeight, bands, into, space);
    }

    /** The same without cover: what is clear shows white. */
    Pixels onWhite() {
        if (bands % 2 == 1) {
            return this;
        }
        int colours = bands - 1;
        int[] into = new int[width * height * colours];
        for (int i = 0; i < width * height; i++) {
            int cover = samples[i * bands + colours];
            for (int band = 0; band < colours; band++) {
                into[i * colours + band] = (samples[i * bands + band] * cover + 255 * (255 - cover) + 127) / 255;
            }
        }
        return new Pixels(width, height, colours, into, space);
    }

    /** In the screen's colours, nothing with it but the picture. */
    BufferedImage image() {
        boolean cover = bands % 2 == 0;
        BufferedImage image =
                new BufferedImage(width, height, cover ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        if (bands >= 3 && !space.isCS_sRGB()) {
            new ColorConvertOp(null).filter(inItsColours(cover), image);
            return image;
        }
        int[] packed = new int[width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int at = (y * width + x) * bands;
                int green = bands >= 3 ? samples[at + 1] : samples[at];
                int blue = bands >= 3 ? samples[at + 2] : samples[at];
                int alpha = cover ? samples[at + bands - 1] : 255;
                packed[x] = alpha << 24 | samples[at] << 16 | green << 8 | blue;
            }
            image.setRGB(0, y, width, 1, packed, 0, width);
        }
        return image;
    }

    private BufferedImage inItsColours(boolean cover) {
        byte[] bytes = new byte[samples.length];
        int[] offsets = new int[bands];
        for (int i = 0; i < samples.length; i++) {
            bytes[i] = (byte) samples[i];
        }
        for (int band = 0; band < bands; band++) {
            offsets[band] = band;
        }
        ComponentColorModel model = new ComponentColorModel(
                space, cover, false, cover ? Transparency.TRANSLUCENT : Transparency.OPAQUE, DataBuffer.TYPE_BYTE);
        return new BufferedImage(
                model,
                Raster.createWritableRaster(
                        new ComponentSampleModel(DataBuffer.TYPE_BYTE, width, height, bands, width * bands, offsets),
                        new DataBufferByte(bytes, bytes.length),
                        null),
                false,
                null);
    }
}
