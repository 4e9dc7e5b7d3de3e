package weekwright.bench;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * A PNG file written once more with its most frequent colours alone, each other pixel in the nearest of them: pages have one
 * ink, two pigments and what lies between a letter and its paper, so little of it is seen.
 */
final class SmallPicture {
    private SmallPicture() {}

    /** @param most how many colours are left, at most 256 */
    static void reduce(Path file, int most) throws IOException {
        BufferedImage picture = ImageIO.read(file.toFile());
        List<Integer> palette = palette(picture, most);
        int bits = most <= 2 ? 1 : most <= 4 ? 2 : most <= 16 ? 4 : 8;
        byte[][] parts = new byte[3][palette.size()];
        for (int i = 0; i < palette.size(); i++) {
            parts[0][i] = (byte) (palette.get(i) >> 16);
            parts[1][i] = (byte) (palette.get(i) >> 8);
            parts[2][i] = (byte) (int) palette.get(i);
        }
        IndexColorModel colours = new IndexColorModel(bits, palette.size(), parts[0], parts[1], parts[2]);
        WritableRaster raster = bits == 8
                ? colours.createCompatibleWritableRaster(picture.getWidth(), picture.getHeight())
                : WritableRaster.createPackedRaster(
                        DataBuffer.TYPE_BYTE, picture.getWidth(), picture.getHeight(), 1, bits, null);
        Map<Integer, Integer> nearest = new HashMap<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int colour = picture.getRGB(x, y) & 0xFFFFFF;
                raster.setSample(x, y, 0, nearest.computeIfAbsent(colour, c -> nearest(palette, c)));
            }
        }
        write(new BufferedImage(colours, raster, false, null), file);
    }

    private static List<Integer> palette(BufferedImage picture, int most) {
        Map<Integer, Integer> count = new HashMap<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                count.merge(picture.getRGB(x, y) & 0xFFFFFF, 1, Integer::sum);
            }
        }
        return count.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<Integer, Integer> entry) -> -entry.getValue())
                        .thenComparing(Map.Entry::getKey))
                .limit(most)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static int nearest(List<Integer> palette, int colour) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < palette.size(); i++) {
            int apart = 0;
            for (int shift = 0; shift <= 16; shift += 8) {
                int off = (palette.get(i) >> shift & 255) - (colour >> shift & 255);
                apart += off * off;
            }
            if (apart < least) {
                least = apart;
                best = i;
            }
        }
        return best;
    }

    private static void write(BufferedImage picture, Path file) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality(0);
        Files.delete(file);
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(picture, null, null), param);
        } finally {
            writer.dispose();
        }
    }
}
