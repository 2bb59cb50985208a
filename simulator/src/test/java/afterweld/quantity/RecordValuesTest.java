package afterweld.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.Afterweld;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every record that a program can make and that holds a number refuses one that is none, unless it
 * is named here with what the absence of a number means in it.
 */
class RecordValuesTest {
  /** Where NaN says that something is not predicted, not claimed or not there. */
  private static final List<String> NAN_MEANS_NONE =
      List.of(
          "choice.filler.FillerOption$Point",
          "document.JsonNumber",
          "joint.JointStrength.lowestYield",
          "section.Softening$OfSide",
          "strength.HardnessScale$Reading",
          "study.AgeingStudy$Paint.share",
          "study.AgeingStudy$Window",
          "study.FirstOrder$Index",
          "study.GridStudy$Band",
          "study.JointFigures",
          "study.Quantiles",
          "study.SpreadStudy$Influence",
          "study.TraverseFit$CurvePoint");

  private static final Map<Class<?>, Object> SAMPLES =
      Map.of(
          double.class,
          1.0,
          int.class,
          1,
          long.class,
          1L,
          boolean.class,
          true,
          String.class,
          "a word",
          Optional.class,
          Optional.empty(),
          OptionalDouble.class,
          OptionalDouble.of(1),
          List.class,
          List.of(),
          Set.class,
          Set.of(),
          Map.class,
          Map.of());

  @Test
  void noRecordTakesANumberThatIsNone() throws Exception {
    List<String> takes = new ArrayList<>();
    int tried = 0;
    for (Class<?> type : records()) {
      Optional<Object[]> sample = sample(type);
      if (sample.isPresent() && made(type, sample.get())) {
        tried++;
        numbers(type)
            .filter(at -> made(type, without(sample.get(), at)))
            .mapToObj(at -> type.getName() + "." + type.getRecordComponents()[at].getName())
            .forEach(takes::add);
      }
    }
    assertTrue(tried > 20, "records tried: " + tried);
    for (String known : NAN_MEANS_NONE) {
      assertTrue(takes.removeIf(name -> name.startsWith("afterweld." + known)), known);
    }
    assertEquals(List.of(), takes);
  }

  private static IntStream numbers(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    return IntStream.range(0, components.length)
        .filter(at -> components[at].getType() == double.class);
  }

  private static Object[] without(Object[] sample, int at) {
    Object[] values = sample.clone();
    values[at] = Double.NaN;
    return values;
  }

  private static Optional<Object[]> sample(Class<?> type) {
    Object[] values =
        Arrays.stream(type.getRecordComponents()).map(one -> value(one.getType())).toArray();
    return Arrays.stream(values).anyMatch(value -> value == null)
        ? Optional.empty()
        : Optional.of(values);
  }

  private static Object value(Class<?> type) {
    return type.isEnum() ? type.getEnumConstants()[0] : SAMPLES.get(type);
  }

  private static boolean made(Class<?> type, Object[] values) {
    try {
      Class<?>[] types =
          Arrays.stream(type.getRecordComponents())
              .map(RecordComponent::getType)
              .toArray(Class<?>[]::new);
      Constructor<?> constructor = type.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      constructor.newInstance(values);
      return true;
    } catch (InvocationTargetException refused) {
      return false;
    } catch (ReflectiveOperationException cause) {
      throw new LinkageError(cause.toString(), cause);
    }
  }

  private static List<Class<?>> records() throws IOException, URISyntaxException {
    Path classes =
        Path.of(Afterweld.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    try (Stream<Path> files = Files.walk(classes.resolve("afterweld"))) {
      return files
          .map(file -> classes.relativize(file).toString())
          .filter(name -> name.endsWith(".class") && !name.endsWith("package-info.class"))
          .map(name -> name.substring(0, name.length() - 6).replace('/', '.'))
          .sorted()
          .<Class<?>>map(RecordValuesTest::named)
          .filter(Class::isRecord)
          .filter(type -> Modifier.isPublic(type.getModifiers()))
          .toList();
    }
  }

  private static Class<?> named(String name) {
    try {
      return Class.forName(name, false, RecordValuesTest.class.getClassLoader());
    } catch (ClassNotFoundException cause) {
      throw new LinkageError(cause.toString(), cause);
    }
  }
}
