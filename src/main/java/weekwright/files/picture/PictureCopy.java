package weekwright.files.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.concurrent.Semaphore;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.event.IIOReadWarningListener;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import weekwright.base.FileKind;
import weekwright.base.Refused;

/** Decodes a picture and writes it anew: upright, no larger than needed, in the screen's colours, without any tag. A WebP
 * becomes a JPEG, on white where it is clear. */
final class PictureCopy {
    /** Of larger pictures only each second, third … pixel is decoded. */
    private static final long MOST_DECODED = 16_000_000;

    private static final float QUALITY = 0.85f;
    private static final Semaphore AT_ONCE = new Semaphore(2);

    private PictureCopy() {}

    /** What the copies of a picture of that kind are. */
    static FileKind as(FileKind original) {
        return original == FileKind.WEBP ? FileKind.JPEG : original;
    }

    /** @throws Refused when it cannot be decoded, or only in part */
    static Pixels decode(Path file, PictureFacts facts, int most) throws IOException, Refused {
        AT_ONCE.acquireUninterruptibly();
        try {
            Pixels read = Pixels.reduced(decoded(file, facts.kind()), most).turned(facts.orientation());
            return as(facts.kind()) == FileKind.JPEG ? read.onWhite() : read;
        } finally {
            AT_ONCE.release();
        }
    }

    private static BufferedImage decoded(Path file, FileKind kind) throws IOException, Refused {
        ImageReader reader = ImageIO.getImageReadersByFormatName(kind.ending()).next();
        Shortage shortage = new Shortage();
        try (FileImageInputStream in = new FileImageInputStream(file.toFile())) {
            reader.setInput(in, true, true);
            reader.addIIOReadWarningListener(shortage);
            PictureFacts.bound(reader.getWidth(0), reader.getHeight(0));
            ImageReadParam how = reader.getDefaultReadParam();
            int each = 1;
            while ((long) reader.getWidth(0) * reader.getHeight(0) / ((long) each * each) > MOST_DECODED) {
                each++;
            }
            how.setSourceSubsampling(each, each, 0, 0);
            BufferedImage image = reader.read(0, how);
            if (shortage.isSeen) {
                throw unreadable();
            }
            return image;
        } catch (IOException | RuntimeException e) {
            // the readers of the JDK throw both for what they cannot read
            throw unreadable();
        } finally {
            reader.dispose();
        }
    }

    private static Refused unreadable() {
        return new Refused("is damaged or of a rare kind", "open it and save it once more as JPEG");
    }

    /** A JPEG that ends early is filled up with grey and only warned of. */
    private static final class Shortage implements IIOReadWarningListener {
        private boolean isSeen;

        @Override
        public void warningOccurred(ImageReader source, String warning) {
            isSeen |= warning.contains("end of");
        }
    }

    static void write(Pixels pixels, FileKind kind, OutputStream out) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName(kind.ending()).next();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
            writer.setOutput(stream);
            ImageWriteParam how = writer.getDefaultWriteParam();
            if (kind == FileKind.JPEG) {
                how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                how.setCompressionQuality(QUALITY);
            }
            writer.write(null, new IIOImage(pixels.image(), null, null), how);
        } finally {
            writer.dispose();
        }
    }
}
