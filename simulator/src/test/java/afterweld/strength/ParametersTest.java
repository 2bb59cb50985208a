package afterweld.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.metallurgy.Parameter;
import afterweld.metallurgy.PrecipitationParameters;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ParametersTest {
  private static List<Parameter> parameters(Class<?> table) {
    return Arrays.stream(table.getDeclaredFields())
        .filter(field -> Modifier.isPublic(field.getModifiers()))
        .map(
            field -> {
              try {
                return (Parameter) field.get(null);
              } catch (IllegalAccessException e) {
                throw new AssertionError(e);
              }
            })
        .toList();
  }

  @ParameterizedTest
  @ValueSource(classes = {PrecipitationParameters.class, StrengthParameters.class})
  void everyConstantHasASymbolOfItsOwnUnitAndSource(Class<?> table) {
    List<Parameter> all = parameters(table);
    assertTrue(all.size() > 20);
    assertEquals(all.size(), all.stream().map(Parameter::symbol).distinct().count());
    for (Parameter parameter : all) {
      assertFalse(parameter.unit().isBlank(), parameter.symbol());
      assertFalse(parameter.source().text().isBlank(), parameter.symbol());
      assertTrue(Double.isFinite(parameter.value()), parameter.symbol());
    }
  }
}
