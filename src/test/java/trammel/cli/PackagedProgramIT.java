package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program as it is handed out; runs after packaging. */
class PackagedProgramIT {
  private static final Path FOLDER = Path.of(System.getProperty("trammel.folder", "target"));
  private static final String SHEET = "catalog-demo/builds/cairnback-too-wide.build.yaml";

  private static List<String> entries() throws IOException {
    try (JarFile jar = new JarFile(FOLDER.resolve("trammel.jar").toFile())) {
      return jar.stream().map(ZipEntry::getName).toList();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "org/drools/drl/parser/",
        "org/drools/drl/extensions/",
        "org/drools/mvel/",
        "org/drools/mvelcompiler/",
        "org/drools/ecj/",
        "org/drools/model/codegen/",
        "org/mvel/",
        "org/mvel2/",
        "org/antlr/",
        "org/eclipse/jdt/",
        "com/github/javaparser/"
      })
  void nothingInItCanCompileAText(String folder) throws IOException {
    assertThat(entries())
        .contains("trammel/cli/Main.class")
        .noneMatch(name -> name.startsWith(folder));
  }

  @Test
  void itHoldsNoRuleAsTextAndNoForeignSignature() throws IOException {
    assertThat(entries())
        .noneMatch(name -> name.endsWith(".drl"))
        .noneMatch(name -> name.matches("META-INF/.*[.](SF|RSA|DSA)"));
  }

  private record Ended(int status, String out, String err) {}

  private static Ended run(Path launcher, String... arguments) throws Exception {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    List<String> command = new ArrayList<>(List.of(launcher.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().put("LC_ALL", "C");
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    try {
      int status = builder.start().waitFor();
      return new Ended(
          status,
          Files.readString(out, StandardCharsets.UTF_8),
          Files.readString(err, StandardCharsets.UTF_8));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void theLauncherChecksASheetAndPrintsUtf8WhateverTheLocale() throws Exception {
    Ended ended = run(FOLDER.resolve("trammel"), "check", "--on", "2026-11-25", SHEET);
    assertThat(ended.err()).isEmpty();
    assertThat(ended.status()).isEqualTo(5);
    assertThat(ended.out()).startsWith("DOES NOT FIT.").contains(" ± ");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void jsonIsAllThatStandsOnStandardOutput() throws Exception {
    Ended ended = run(FOLDER.resolve("trammel"), "check", "--format", "json", SHEET);
    assertThat(ended.status()).isEqualTo(5);
    assertThat(new tools.jackson.databind.ObjectMapper().readTree(ended.out()).path("verdict"))
        .hasToString("\"does not fit\"");
  }

  @Test
  void thereIsAClassDataArchiveNewerThanTheProgram() throws IOException {
    assertThat(Files.getLastModifiedTime(FOLDER.resolve("trammel.jsa")))
        .isGreaterThan(Files.getLastModifiedTime(FOLDER.resolve("trammel.jar")));
  }

  /** A copy has another path and time, so its archive no longer fits and must do no harm. */
  @ParameterizedTest
  @ValueSource(longs = {-3600, 3600})
  @DisabledOnOs(OS.WINDOWS)
  void anArchiveThatNoLongerFitsDoesNoHarm(long secondsLater, @TempDir Path copy) throws Exception {
    for (String name : List.of("trammel", "trammel.jar", "trammel.jsa")) {
      Files.copy(
          FOLDER.resolve(name),
          copy.resolve(name),
          java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
    }
    Path jar = copy.resolve("trammel.jar");
    Files.setLastModifiedTime(jar, FileTime.from(Instant.now()));
    Path archive = copy.resolve("trammel.jsa");
    Files.setLastModifiedTime(archive, FileTime.from(Instant.now().plusSeconds(secondsLater)));
    Ended ended = run(copy.resolve("trammel"), "rules", "list");
    assertThat(ended.status()).isZero();
    assertThat(ended.out()).startsWith("clearance.");
  }
}
