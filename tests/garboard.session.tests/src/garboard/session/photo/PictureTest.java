// SPDX-License-Identifier: EPL-2.0
package garboard.session.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Random;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.session.photo.PictureException.Reason;

class PictureTest {

    /** Red at the left, blue at the right. */
    private static byte[] picture(String format, int width, int height) throws IOException {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.RED);
        graphics.fillRect(0, 0, width / 2, height);
        graphics.setColor(Color.BLUE);
        graphics.fillRect(width / 2, 0, width - width / 2, height);
        graphics.dispose();
        var out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    /** Puts an Exif segment behind the start of a JPEG file: orientation and the date of the shot, laid out as in Exif 2.3, section 4.5. */
    private static byte[] withExif(byte[] jpeg, int orientation, String date, ByteOrder order) {
        ByteBuffer tiff = ByteBuffer.allocate(80).order(order);
        tiff.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2);
        tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation).putShort((short) 0);
        tiff.putShort((short) 0x8769).putShort((short) 4).putInt(1).putInt(38);
        tiff.putInt(0);
        tiff.putShort((short) 1);
        tiff.putShort((short) 0x9003).putShort((short) 2).putInt(20).putInt(56);
        tiff.putInt(0);
        tiff.put(date.getBytes(StandardCharsets.US_ASCII));
        byte[] exif = Arrays.copyOf(tiff.array(), 76);
        ByteBuffer file = ByteBuffer.allocate(jpeg.length + exif.length + 10);
        file.put(jpeg, 0, 2).put((byte) 0xff).put((byte) 0xe1).putShort((short) (exif.length + 8)).put("Exif\0\0".getBytes(StandardCharsets.US_ASCII))
            .put(exif).put(jpeg, 2, jpeg.length - 2);
        return file.array();
    }

    private static Reason refusal(byte[] bytes) {
        try {
            Picture.of(bytes);
        } catch (PictureException refused) {
            return refused.reason();
        }
        throw new AssertionError("was taken");
    }

    @ParameterizedTest
    @CsvSource({"png, image/png", "jpg, image/jpeg"})
    void takesPngAndJpegAsTheyAre(String format, String mediaType) throws Exception {
        byte[] bytes = picture(format, 40, 30);
        Picture taken = Picture.of(bytes);
        assertThat(taken.data()).isEqualTo(bytes);
        assertThat(taken.mediaType()).isEqualTo(mediaType);
        assertThat(taken.width()).isEqualTo(40);
        assertThat(taken.height()).isEqualTo(30);
        assertThat(taken.isHuge()).isFalse();
        assertThat(taken.takenOn()).isEmpty();
    }

    @Test
    void saysWhatIsNoPicture() throws Exception {
        assertThat(refusal(new byte[0])).isEqualTo(Reason.EMPTY);
        assertThat(refusal("a letter to the yard".getBytes(StandardCharsets.UTF_8))).isEqualTo(Reason.NO_PICTURE);
        assertThat(refusal("%PDF-1.7".getBytes(StandardCharsets.UTF_8))).isEqualTo(Reason.NO_PICTURE);
        assertThat(refusal(picture("gif", 4, 4))).isEqualTo(Reason.OTHER_KIND);
        assertThat(refusal(picture("bmp", 4, 4))).isEqualTo(Reason.OTHER_KIND);
        assertThat(refusal("\0\0\0\30ftypheic\0\0".getBytes(StandardCharsets.ISO_8859_1))).isEqualTo(Reason.OTHER_KIND);
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg"})
    void saysWhatIsCutShort(String format) throws Exception {
        byte[] whole = picture(format, 300, 200);
        assertThat(refusal(Arrays.copyOf(whole, 60))).isEqualTo(Reason.BROKEN);
    }

    @Test
    void refusesABombOfPixels() throws Exception {
        byte[] png = picture("png", 4, 4);
        // Width and height stand at 16 and 20 in the first chunk (PNG specification, section 11.2.2); the checksum follows at 29.
        ByteBuffer.wrap(png).putInt(16, 30_000).putInt(20, 30_000);
        var sum = new java.util.zip.CRC32();
        sum.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());
        assertThat(refusal(png)).isEqualTo(Reason.TOO_LARGE);
    }

    @Test
    void makesASmallerCopyOfAHugePicture() throws Exception {
        Picture huge = Picture.of(picture("png", 4000, 1000));
        assertThat(huge.isHuge()).isTrue();
        Picture small = huge.scaledDown();
        assertThat(small.width()).isEqualTo(1800);
        assertThat(small.height()).isEqualTo(450);
        assertThat(small.mediaType()).isEqualTo("image/jpeg");
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(small.data()));
        assertThat(new Color(image.getRGB(100, 200)).getRed()).isGreaterThan(200);
        assertThat(new Color(image.getRGB(1700, 200)).getBlue()).isGreaterThan(200);
    }

    @Test
    void turnsUprightWhatACameraTookOnItsSide() throws Exception {
        for (ByteOrder order : new ByteOrder[] {ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN}) {
            // 6: the top of the scene is at the right of the stored picture (Exif 2.3, tag 0x0112)
            Picture taken = Picture.of(withExif(picture("jpg", 400, 200), 6, "2026:05:31 14:05:00\0", order));
            assertThat(taken.width()).isEqualTo(200);
            assertThat(taken.height()).isEqualTo(400);
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(taken.data()));
            assertThat(new Color(image.getRGB(100, 50)).getRed()).isGreaterThan(200);
            assertThat(new Color(image.getRGB(100, 350)).getBlue()).isGreaterThan(200);
            assertThat(taken.takenOn()).contains(LocalDate.of(2026, 5, 31));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 40, 0", "2, 360, 0", "3, 360, 0", "4, 40, 0", "5, 0, 40", "6, 0, 40", "7, 0, 360", "8, 0, 360"})
    void turnsAllEightWaysToHoldACamera(int orientation, int redX, int redY) throws Exception {
        Picture taken = Picture.of(withExif(picture("jpg", 400, 200), orientation, "2026:05:31 14:05:00\0", ByteOrder.BIG_ENDIAN));
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(taken.data()));
        int x = redX == 0 ? image.getWidth() / 2 : redX;
        int y = redY == 0 ? image.getHeight() / 2 : redY;
        assertThat(new Color(image.getRGB(x, y)).getRed()).as("orientation " + orientation).isGreaterThan(200);
    }

    @Test
    void takesTheDayOfTheShotAndNoneWhenTheCameraHadNoClock() throws Exception {
        byte[] jpeg = picture("jpg", 40, 30);
        assertThat(Picture.of(withExif(jpeg, 1, "2026:05:31 14:05:00\0", ByteOrder.BIG_ENDIAN)).takenOn()).contains(LocalDate.of(2026, 5, 31));
        assertThat(Picture.of(withExif(jpeg, 1, "0000:00:00 00:00:00\0", ByteOrder.BIG_ENDIAN)).takenOn()).isEmpty();
        assertThat(Picture.of(withExif(jpeg, 99, "                   \0", ByteOrder.BIG_ENDIAN)).takenOn()).isEmpty();
    }

    @Test
    void failsInNoOtherWayOnDamagedBytes() throws Exception {
        var random = new Random(7);
        byte[] whole = withExif(picture("jpg", 60, 40), 6, "2026:05:31 14:05:00\0", ByteOrder.BIG_ENDIAN);
        for (int round = 0; round < 300; round++) {
            byte[] damaged = whole.clone();
            for (int hit = 0; hit < 5; hit++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt();
            }
            try {
                assertThat(Picture.of(damaged).width()).isPositive();
            } catch (PictureException refused) {
                assertThat(refused.reason()).isNotNull();
            }
        }
    }

    @Test
    void givesNobodyItsOwnBytes() throws Exception {
        Picture taken = Picture.of(picture("png", 4, 4));
        taken.data()[0] = 0;
        assertThat(taken.data()[0]).isEqualTo((byte) 0x89);
    }

    @Test
    void refusesWithoutWordsOfItsOwn() {
        assertThatThrownBy(() -> Picture.of(new byte[0])).isInstanceOf(PictureException.class);
    }
}
