package trammel.read;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YamlReaderTest {
  private static Node tree(String text) {
    Problems problems = new Problems();
    Node node = YamlReader.parse("a.yaml", text.getBytes(UTF_8), problems).orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    return node;
  }

  private static MapNode map(String text) {
    return (MapNode) tree(text);
  }

  private static TextNode text(Node map, String... keys) {
    Node node = map;
    for (String key : keys) {
      node = ((MapNode) node).get(key).orElseThrow();
    }
    return (TextNode) node;
  }

  private static String refused(byte[] bytes) {
    Problems problems = new Problems();
    assertThat(YamlReader.parse("a.yaml", bytes, problems)).isEmpty();
    return problems.toString();
  }

  @Test
  void everyValueKnowsItsPlaceAndPath() {
    MapNode root = map("# first\nhubs:\n  front: {pilot: 71 mm}\nlines:\n  - part: a\n  - b\n");
    TextNode pilot = text(root, "hubs", "front", "pilot");
    assertThat(pilot.place()).isEqualTo(new Place("a.yaml", 3, 18));
    assertThat(pilot.path()).isEqualTo("hubs.front.pilot");
    assertThat(root.entries().get(1).place()).isEqualTo(new Place("a.yaml", 4, 1));
    List<Node> items = ((ListNode) root.get("lines").orElseThrow()).items();
    assertThat(((MapNode) items.get(0)).entries().get(0).value().path()).isEqualTo("lines[0].part");
    assertThat(items.get(1).path()).isEqualTo("lines[1]");
    assertThat(items.get(1).place()).isEqualTo(new Place("a.yaml", 6, 5));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "no",
        "on",
        "True",
        "010",
        "0x1F",
        "1:30",
        "1_000",
        "2026-11-25",
        ".5",
        "+5",
        "1,5",
        "5/8",
        "~",
        "null",
        "33.50",
        "1e3",
        ".inf",
        ".nan",
        "12345678901234567890",
        "815 mm ± 4 mm"
      })
  void everyScalarIsTheTextAsWritten(String scalar) {
    TextNode node = text(map("a: " + scalar + "\n"), "a");
    assertThat(node.text()).isEqualTo(scalar);
    assertThat(node.quoted()).isFalse();
  }

  @Test
  void quotesAndBlocksAreTold() {
    MapNode root = map("a: \"b\"\nb: 'c'\nc: |\n  d\nd: >\n  e\ne:\nf: ''\n");
    assertThat(root.entries())
        .extracting(entry -> ((TextNode) entry.value()).quoted())
        .containsExactly(true, true, true, true, false, true);
    assertThat(text(root, "c").text()).isEqualTo("d\n");
    assertThat(text(root, "e").isBlank()).isTrue();
    assertThat(text(root, "f").isBlank()).isFalse();
  }

  @Test
  void columnsCountCharactersNotHalves() {
    MapNode root = map("{😀: 'x', b: \"y\"}\r\n");
    assertThat(text(root, "b").place()).isEqualTo(new Place("a.yaml", 1, 13));
    assertThat(text(root, "b").quoted()).isTrue();
  }

  @Test
  void aByteOrderMarkAndWindowsLineEndsAreFine() {
    MapNode root = map("\uFEFFa: b\r\nc: \"d\"\r\n");
    assertThat(root.place()).isEqualTo(new Place("a.yaml", 1, 1));
    assertThat(text(root, "c").place()).isEqualTo(new Place("a.yaml", 2, 4));
    assertThat(text(root, "c").quoted()).isTrue();
  }

  @Test
  void oneDocumentMayBeginWithItsMark() {
    assertThat(text(map("---\na: b\n"), "a").text()).isEqualTo("b");
  }

  @Test
  void refusesHiddenCharactersWhereverTheyStand() {
    assertThat(refused("a: b\u202Ec # x\u200By\nd: \u00ADe\n".getBytes(UTF_8)))
        .isEqualTo(
            """
            a.yaml:1:5: the hidden character U+202E (right-to-left override); expected visible text
              Delete it; typing the line anew is the surest way.
            a.yaml:1:11: the hidden character U+200B (zero width space); expected visible text
              Delete it; typing the line anew is the surest way.
            a.yaml:2:4: the hidden character U+00AD (soft hyphen); expected visible text
              Delete it; typing the line anew is the surest way.""");
  }

  @ParameterizedTest
  @ValueSource(
      ints = {
        0x00, 0x07, 0x1B, 0x7F, 0x85, 0x200E, 0x2028, 0x2029, 0x2066, 0x2069, 0xFEFF, 0x3164,
        0xE0041, 0xFFFE
      })
  void refusesEachHiddenCharacter(int c) {
    assertThat(refused(("ab: c" + Character.toString(c) + "\n").getBytes(UTF_8)))
        .startsWith("a.yaml:1:6: the hidden character " + String.format("U+%04X", c));
  }

  @Test
  void visibleCharactersOfEveryScriptAreFine() {
    String visible = "Ölwanne 車輪 колесо عجلة ½ − ± ° 🛞 a\u00A0b";
    assertThat(text(map("a: " + visible + "\n"), "a").text()).isEqualTo(visible);
  }

  @Test
  void refusesLatin1AndNamesTheByte() {
    assertThat(refused("a: b\nname: Ölwanne\n".getBytes(ISO_8859_1)))
        .isEqualTo(
            """
            a.yaml:2:7: byte 12 of the file, 0xD6, is not UTF-8; expected UTF-8 text
              Save the file as UTF-8. It may be Latin-1 or Windows-1252 now.""");
  }

  @Test
  void refusesATextCutInTheMiddleOfACharacter() {
    byte[] whole = "a: Ö".getBytes(UTF_8);
    assertThat(refused(java.util.Arrays.copyOf(whole, whole.length - 1)))
        .startsWith("a.yaml:1:4: byte 4 of the file, 0xC3, is not UTF-8");
  }

  @Test
  void refusesOtherUnicodeEncodings() {
    String text = "a: b\n";
    String expected =
        """
        a.yaml: this file is UTF-16; expected UTF-8
          Save the file as UTF-8.""";
    assertThat(refused(text.getBytes(UTF_16))).isEqualTo(expected);
    assertThat(refused(("\uFEFF" + text).getBytes(UTF_16LE))).isEqualTo(expected);
    assertThat(refused(text.getBytes(UTF_16LE))).contains("is UTF-16 or UTF-32; expected UTF-8");
    assertThat(refused(text.getBytes(UTF_16BE))).contains("is UTF-16 or UTF-32; expected UTF-8");
    assertThat(refused(("\uFEFF" + text).getBytes(Charset.forName("UTF-32LE"))))
        .contains("is UTF-32; expected UTF-8");
    assertThat(refused(text.getBytes(Charset.forName("UTF-32BE"))))
        .contains("hidden character U+0000");
  }

  @Test
  void refusesALargeFileByItsSizeAlone(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("large.yaml");
    try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
      sparse.setLength(10_000_000);
    }
    Problems problems = new Problems();
    assertThat(YamlReader.read(Path.of("large.yaml"), file, problems)).isEmpty();
    assertThat(problems)
        .hasToString(
            """
            large.yaml: this file has 10.0 MB; expected at most 4 MB
              Split it, or check that it is the file you mean.""");
  }

  @Test
  void readsAFileOfTheLargestSize() {
    String line = "- one of very many values in a list\n";
    String most = line.repeat((int) YamlReader.LARGEST / line.length());
    Node node = Assertions.assertTimeoutPreemptively(Duration.ofSeconds(30), () -> tree(most));
    assertThat(((ListNode) node).items()).hasSize((int) YamlReader.LARGEST / line.length());
  }

  @Test
  void readsAVeryLongLineInTime() {
    String most = "😀: [" + "1,".repeat(1_000_000) + "1]\n";
    Node node = Assertions.assertTimeoutPreemptively(Duration.ofSeconds(30), () -> tree(most));
    assertThat(((ListNode) ((MapNode) node).entries().get(0).value()).items()).hasSize(1_000_001);
  }

  @Test
  void aDeepChainOfKeysIsRefusedBeforeItCosts() {
    String brackets = "a: " + "[".repeat(1_000_000);
    assertThat(
            Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(10), () -> refused(brackets.getBytes(UTF_8))))
        .contains("nested more than 50 deep");
    assertThat(tree("[".repeat(50) + "]".repeat(50))).isInstanceOf(ListNode.class);
  }

  @Test
  void refusesTextsAndKeysThatAreTooLong() {
    Problems problems = new Problems();
    YamlReader.parse(
        "a.yaml",
        ("a: " + "x".repeat(10_001) + "\n" + "y".repeat(201) + ": z\n").getBytes(UTF_8),
        problems);
    assertThat(problems)
        .hasToString(
            """
            a.yaml:1:4: a text of 10001 characters; expected at most 10000
              Shorten it; a quote that is never closed often makes a text too long.
            a.yaml:2:1: a key of 201 characters; expected at most 200
              Shorten it; a long text belongs after the ":".""");
  }

  @Test
  void saysWhatIsWrongWithTheFileItself(@TempDir Path folder) {
    Problems problems = new Problems();
    assertThat(YamlReader.read(Path.of("here"), folder, problems)).isEmpty();
    assertThat(YamlReader.read(Path.of("no.yaml"), folder.resolve("no.yaml"), problems)).isEmpty();
    assertThat(problems)
        .hasToString(
            """
            here: this is a folder; expected a file
              Name a file in it.
            no.yaml: there is no such file; expected a file of this name
              Check the name and the current folder.""");
  }

  @Test
  void followsASymbolicLink(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("real.yaml"), "a: b\n");
    Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file);
    Problems problems = new Problems();
    assertThat(YamlReader.read(Path.of("link.yaml"), link, problems)).isPresent();
    assertThat(problems.isEmpty()).isTrue();
  }

  /** Whatever bytes come, there is a tree or a problem in plain words, never an exception. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ":",
        "-",
        "?",
        "&",
        "*",
        "!",
        "|",
        ">",
        "'",
        "\"",
        "%",
        "@",
        "`",
        "{",
        "}",
        "[",
        "]",
        ",",
        "#",
        "---",
        "...",
        "a: &",
        "a: *",
        "a: !",
        "a: |",
        "a: |9",
        "a: >+",
        "? ",
        "- - -",
        "{a",
        "[a",
        "a: 'b",
        "a: \"\\",
        "a: \"\\u12\"",
        "a: \"\\uD800\"",
        "--- |\n%",
        "&a &b c",
        "a: !<",
        "a: !!",
        "%TAG ! x\n---\n!a b",
        "%YAML 9.9\n---\na",
        "a: b\n...\n%X\n---\nc",
        "a:\n- b\n c",
        "?\n? a",
        "[a: b: c]",
        "{? a, b}",
        "a: {}: b",
        "'a' 'b'",
        "\uFFFD: a"
      })
  void strangeTextsAreRefusedInPlainWordsOrRead(String strange) {
    Problems problems = new Problems();
    boolean read = YamlReader.parse("a.yaml", strange.getBytes(UTF_8), problems).isPresent();
    assertThat(read || !problems.isEmpty()).isTrue();
    assertThat(problems.toString())
        .doesNotContain("tools.jackson", "snakeyaml", "Exception", "scalar", "token", "mapping");
  }
}
