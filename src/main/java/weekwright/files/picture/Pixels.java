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
import java.util.Arrays;

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
        RowReader rows;
        if (plain && deeper == 0 && interleaved(image) instanceof Interleaved bytes) {
            rows = bytes;
        } else if (plain) {
            Raster raster = image.getRaster();
            rows = (y, row) -> {
                raster.getPixels(0, y, image.getWidth(), 1, row);
                for (int i = 0; deeper > 0 && i < row.length; i++) {
                    row[i] >>= deeper;
                }
            };
        } else {
            int[] packed = new int[image.getWidth()];
            rows = (y, row) -> {
                image.getRGB(0, y, image.getWidth(), 1, packed, 0, image.getWidth());
                unpack(packed, bands, row);
            };
        }
        return reduced(
                new Rows(image.getWidth(), image.getHeight(), bands, rows),
                most,
                plain ? image.getColorModel().getColorSpace() : ColorSpace.getInstance(ColorSpace.CS_sRGB));
    }

    /** Rows of a picture whose bytes lie side by side, as a JPEG's do; the raster's own way costs several times as much. */
    private record Interleaved(byte[] bytes, ComponentSampleModel model) implements RowReader {
        @Override
        public void read(int y, int[] row) {
            int[] offsets = model.getBandOffsets();
            int bands = offsets.length;
            int each = model.getPixelStride();
            for (int band = 0; band < bands; band++) {
                int from = y * model.getScanlineStride() + offsets[band];
                for (int i = band; i < row.length; i += bands) {
                    row[i] = bytes[from] & 0xff;
                    from += each;
                }
            }
        }
    }

    /** The picture's own bytes where they lie so, else nothing. */
    private static RowReader interleaved(BufferedImage image) {
        Raster raster = image.getRaster();
        return raster.getDataBuffer() instanceof DataBufferByte bytes
                        && raster.getSampleModel() instanceof ComponentSampleModel model
                        && bytes.getNumBanks() == 1
                        && bytes.getOffset() == 0
                        && raster.getSampleModelTranslateX() == 0
                        && raster.getSampleModelTranslateY() == 0
                ? new Interleaved(bytes.getData(), model)
                : null;
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

    /** Adds up a row for each place of the outcome; a picture may be millions wide and one high, hence long. */
    private static void narrow(int[] row, int width, int bands, int into, long[] across) {
        Arrays.fill(across, 0);
        int to = 0;
        long left = 0;
        long end = width;
        for (int at = 0; at < width * bands; at += bands) {
            long right = left + into;
            long within = Math.min(right, end) - left;
            for (int band = 0; band < bands; band++) {
                across[to + band] += row[at + band] * within;
            }
            if (right >= end) {
                to += bands;
                end += width;
                for (int band = 0; band < bands && to < across.length; band++) {
                    across[to + band] += row[at + band] * (into - within);
                }
            }
            left = right;
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
                new BufferedImage(width, height, cover ? BufferedImage.TYPE_4BYTE_ABGR : BufferedImage.TYPE_3BYTE_BGR);
        if (bands >= 3 && !space.isCS_sRGB()) {
            new ColorConvertOp(null).filter(inItsColours(cover), image);
            return image;
        }
        byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        int to = 0;
        for (int at = 0; at < samples.length; at += bands) {
            if (cover) {
                bytes[to++] = (byte) samples[at + bands - 1];
            }
            bytes[to++] = (byte) samples[bands >= 3 ? at + 2 : at];
            bytes[to++] = (byte) samples[bands >= 3 ? at + 1 : at];
            bytes[to++] = (byte) samples[at];
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
