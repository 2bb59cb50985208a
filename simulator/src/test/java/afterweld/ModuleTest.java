package afterweld;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a program may see of the module, and that it is enough. */
class ModuleTest {
  /** The workings: nobody outside may lean on them. */
  private static final List<String> HIDDEN =
      List.of(
          "afterweld.choice.schedule",
          "afterweld.metallurgy",
          "afterweld.section.heat",
          "afterweld.thermal.shell");

  private static ModuleDescriptor module() throws Exception {
    Path classes =
        Path.of(Afterweld.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    return ModuleFinder.of(classes).find("afterweld.simulator").orElseThrow().descriptor();
  }

  private static Set<String> exported() throws Exception {
    return module().exports().stream()
        .map(ModuleDescriptor.Exports::source)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void theWorkingsAreHidden() throws Exception {
    Set<String> hidden = new TreeSet<>(module().packages());
    hidden.removeIf(name -> !name.startsWith("afterweld"));
    hidden.removeAll(exported());
    assertEquals(new TreeSet<>(HIDDEN), hidden);
  }

  /** From the session on, through everything that it hands out and what those hand out. */
  @Test
  void whatASessionHandsOutCanBeUsed() throws Exception {
    Set<String> exported = exported();
    Set<Class<?>> seen = new LinkedHashSet<>();
    Deque<Class<?>> open = new ArrayDeque<>(List.of(Afterweld.class, CaseSession.class));
    List<String> unseen = new ArrayList<>();
    while (!open.isEmpty()) {
      Class<?> type = open.pop();
      if (!seen.add(type)) {
        continue;
      }
      for (Method method : type.getMethods()) {
        types(method)
            .filter(one -> one.getName().startsWith("afterweld."))
            .forEach(
                one -> {
                  if (!exported.contains(one.getPackageName())) {
                    unseen.add(type.getName() + "." + method.getName() + ": " + one.getName());
                  } else if (Modifier.isPublic(one.getModifiers())) {
                    open.add(one);
                  }
                });
      }
    }
    assertTrue(seen.size() > 50, seen.toString());
    assertEquals(List.of(), unseen);
  }

  private static Stream<Class<?>> types(Method method) {
    return Stream.concat(
            Stream.of(method.getGenericReturnType()),
            Stream.concat(
                Arrays.stream(method.getGenericParameterTypes()),
                Arrays.stream(method.getGenericExceptionTypes())))
        .flatMap(ModuleTest::classes);
  }

  private static Stream<Class<?>> classes(Type type) {
    if (type instanceof Class<?> plain) {
      return Stream.of(plain.isArray() ? plain.getComponentType() : plain);
    }
    if (type instanceof WildcardType wildcard) {
      return Stream.concat(
              Arrays.stream(wildcard.getLowerBounds()), Arrays.stream(wildcard.getUpperBounds()))
          .flatMap(ModuleTest::classes);
    }
    return type instanceof ParameterizedType generic
        ? Stream.concat(
            classes(generic.getRawType()),
            Arrays.stream(generic.getActualTypeArguments()).flatMap(ModuleTest::classes))
        : Stream.empty();
  }
}
