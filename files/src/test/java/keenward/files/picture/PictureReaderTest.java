package keenward.files.picture;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Base64;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.Test;

class PictureReaderTest {

  /** White, with a red upper left quarter. */
  private static BufferedImage image(int width, int height, int type) {
    BufferedImage image = new BufferedImage(width, height, type);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, width, height);
    pen.setColor(Color.RED);
    pen.fillRect(0, 0, width / 2, height / 2);
    pen.dispose();
    return image;
  }

  private static byte[] file(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, format, bytes)).isTrue();
    return bytes.toByteArray();
  }

  private static byte[] pdf(int pages, int rotation, boolean locked) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      for (int i = 0; i < pages; i++) {
        PDPage page = new PDPage(new PDRectangle(400, 300));
        page.setRotation(rotation);
        document.addPage(page);
        try (PDPageContentStream pen = new PDPageContentStream(document, page)) {
          pen.setNonStrokingColor(Color.RED);
          pen.addRect(0, 150, 200, 150);
          pen.fill();
        }
      }
      if (locked) {
        document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
      }
      document.save(bytes);
    }
    return bytes.toByteArray();
  }

  private static Picture read(String file, byte[] bytes, int page) {
    PictureReading reading = PictureReader.read(file, bytes, page);
    assertThat(reading).isInstanceOf(PictureReading.Read.class);
    return ((PictureReading.Read) reading).picture();
  }

  private static String refusal(String file, byte[] bytes, int page) {
    PictureReading reading = PictureReader.read(file, bytes, page);
    assertThat(reading).isInstanceOf(PictureReading.Refused.class);
    return ((PictureReading.Refused) reading).problem().message();
  }

  private static byte[] bytes(Picture picture) {
    return Base64.getDecoder().decode(picture.dataUri().replaceFirst("^[^,]*,", ""));
  }

  private static BufferedImage pixels(Picture picture) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(bytes(picture)));
  }

  private static boolean isRed(BufferedImage image, double right, double down) {
    Color color =
        new Color(image.getRGB((int) (right * image.getWidth()), (int) (down * image.getHeight())));
    return color.getRed() > 200 && color.getGreen() < 80;
  }

  @Test
  void keepsAPngAsItIs() throws IOException {
    Picture picture = read("a.PNG", file(image(40, 30, BufferedImage.TYPE_INT_RGB), "png"), 1);

    assertThat(picture.width()).isEqualTo(40);
    assertThat(picture.height()).isEqualTo(30);
    assertThat(picture.dataUri()).startsWith("data:image/png;base64,");
    assertThat(isRed(pixels(picture), 0.2, 0.2)).isTrue();
    assertThat(isRed(pixels(picture), 0.8, 0.8)).isFalse();
  }

  /** A scan with few shades must not come out black and white. */
  @Test
  void keepsTheShadesOfAPalette() throws IOException {
    BufferedImage grey = new BufferedImage(16, 1, BufferedImage.TYPE_BYTE_GRAY);
    for (int i = 0; i < 16; i++) {
      grey.getRaster().setSample(i, 0, 0, i * 17);
    }

    BufferedImage read = pixels(read("a.png", file(grey, "png"), 1));

    long shades =
        java.util.stream.IntStream.range(0, 16).map(i -> read.getRGB(i, 0)).distinct().count();
    assertThat(shades).isEqualTo(16);
  }

  @Test
  void makesALargePictureSmallerButCountsItsOwnPixels() throws IOException {
    Picture picture =
        read("a.png", file(image(4000, 1000, BufferedImage.TYPE_BYTE_GRAY), "png"), 1);

    assertThat(picture.width()).isEqualTo(4000);
    assertThat(picture.height()).isEqualTo(1000);
    assertThat(pixels(picture).getWidth()).isEqualTo(3000);
  }

  /** EXIF 2.32, tag 0x0112: 6 means that the camera was turned, as every phone writes it. */
  @Test
  void turnsAPhotoUprightAndLeavesOutWhereItWasTaken() throws IOException {
    byte[] plain = file(image(40, 20, BufferedImage.TYPE_INT_RGB), "jpg");
    ByteBuffer exif = ByteBuffer.allocate(64);
    exif.put("Exif\0\0MM".getBytes(ISO_8859_1)).putShort((short) 42).putInt(8);
    exif.putShort((short) 1).putShort((short) 0x0112).putShort((short) 3).putInt(1);
    exif.putShort((short) 6).putShort((short) 0).putInt(0);
    exif.put("secret place".getBytes(ISO_8859_1));
    byte[] body = Arrays.copyOf(exif.array(), exif.position());
    ByteBuffer photo = ByteBuffer.allocate(plain.length + body.length + 4);
    photo.put(plain, 0, 2).putShort((short) 0xFFE1).putShort((short) (body.length + 2)).put(body);
    photo.put(plain, 2, plain.length - 2);

    Picture picture = read("a.jpg", photo.array(), 1);

    assertThat(picture.width()).isEqualTo(20);
    assertThat(picture.height()).isEqualTo(40);
    assertThat(picture.dataUri()).startsWith("data:image/jpeg;base64,");
    // The upper left quarter of what the camera stored is the upper right one now.
    assertThat(isRed(pixels(picture), 0.75, 0.25)).isTrue();
    assertThat(isRed(pixels(picture), 0.25, 0.25)).isFalse();
    assertThat(new String(photo.array(), ISO_8859_1)).contains("secret place");
    assertThat(new String(bytes(picture), ISO_8859_1)).doesNotContain("secret place", "Exif");
  }

  @Test
  void drawsAPageOfAPdfInPointsFromItsUpperLeftCorner() throws IOException {
    Picture picture = read("a.pdf", pdf(2, 0, false), 2);

    assertThat(picture.width()).isEqualTo(400, within(1e-6));
    assertThat(picture.height()).isEqualTo(300, within(1e-6));
    assertThat(isRed(pixels(picture), 0.25, 0.25)).isTrue();
    assertThat(isRed(pixels(picture), 0.25, 0.75)).isFalse();
  }

  @Test
  void takesATurnedPageAsItIsShown() throws IOException {
    Picture picture = read("a.pdf", pdf(1, 90, false), 1);

    assertThat(picture.width()).isEqualTo(300, within(1e-6));
    assertThat(picture.height()).isEqualTo(400, within(1e-6));
    assertThat(isRed(pixels(picture), 0.75, 0.25)).isTrue();
  }

  @Test
  void refusesWhatIsNoPicture() throws IOException {
    assertThat(refusal("a.png", "hello".getBytes(ISO_8859_1), 1))
        .contains("a.png:1:1: ", "no picture");
    assertThat(refusal("a.pdf", "hello".getBytes(ISO_8859_1), 1)).contains("cannot be read");
    assertThat(refusal("a.png", new byte[0], 1)).contains("no picture");
    assertThat(refusal("a.pdf", pdf(1, 0, true), 1)).contains("locked");
    assertThat(refusal("a.pdf", pdf(2, 0, false), 3)).contains("no page 3", "from 1 to 2");
  }

  /** PNG (ISO/IEC 15948): the size stands in the first chunk, long before the pixels. */
  @Test
  void refusesAPictureThatWouldFillTheMemory() {
    ByteBuffer png = ByteBuffer.allocate(33);
    png.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}).putInt(13);
    ByteBuffer head = ByteBuffer.allocate(17);
    head.put("IHDR".getBytes(ISO_8859_1)).putInt(60_000).putInt(60_000);
    head.put(new byte[] {8, 2, 0, 0, 0});
    CRC32 crc = new CRC32();
    crc.update(head.array());
    png.put(head.array()).putInt((int) crc.getValue());

    assertThat(refusal("a.png", png.array(), 1)).contains("3600 million pixels");
  }

  /** Whatever is cut off or overwritten, there is a picture or a refusal, and no exception. */
  @Test
  void survivesBrokenFiles() throws IOException {
    Random random = new Random(11);
    for (byte[] sound :
        new byte[][] {
          file(image(30, 20, BufferedImage.TYPE_INT_RGB), "png"),
          file(image(30, 20, BufferedImage.TYPE_INT_RGB), "jpg"),
          pdf(1, 0, false)
        }) {
      for (int i = 0; i < 60; i++) {
        byte[] broken = Arrays.copyOf(sound, random.nextInt(sound.length));
        if (i % 2 == 0) {
          broken = sound.clone();
          broken[random.nextInt(broken.length)] ^= (byte) (1 + random.nextInt(255));
        }
        String name = new String(sound, 0, 4, ISO_8859_1).equals("%PDF") ? "a.pdf" : "a.png";
        assertThat(PictureReader.read(name, broken, 1)).isNotNull();
      }
    }
  }
}
