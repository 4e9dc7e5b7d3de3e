package weekwright.render;

import io.pebbletemplates.pebble.attributes.AttributeResolver;
import io.pebbletemplates.pebble.attributes.ResolvedAttribute;
import io.pebbletemplates.pebble.node.ArgumentsNode;
import io.pebbletemplates.pebble.template.EvaluationContextImpl;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Lets a template read {@code page.name} from a record's component or any public method without arguments of that name,
 * and unwraps an {@link Optional}: an empty one is null, which {@code is empty} asks about and which prints as nothing.
 * A name the record lacks is left to the strict check.
 */
final class RecordAttributes implements AttributeResolver {
    private final Map<Class<?>, Map<String, Optional<Method>>> known = new ConcurrentHashMap<>();

    @Override
    public ResolvedAttribute resolve(
            Object instance,
            Object attribute,
            Object[] arguments,
            ArgumentsNode argumentsNode,
            EvaluationContextImpl context,
            String filename,
            int line) {
        if (!(instance instanceof Record) || argumentsNode != null || !(attribute instanceof String name)) {
            return null;
        }
        Optional<Method> method = known.computeIfAbsent(instance.getClass(), c -> new ConcurrentHashMap<>())
                .computeIfAbsent(name, n -> find(instance.getClass(), n));
        return method.map(m -> new ResolvedAttribute(read(m, instance))).orElse(null);
    }

    private static Optional<Method> find(Class<?> type, String name) {
        try {
            Method method = type.getMethod(name);
            if (method.getDeclaringClass() == Object.class || method.getReturnType() == void.class) {
                return Optional.empty();
            }
            method.setAccessible(true);
            return Optional.of(method);
        } catch (NoSuchMethodException e) {
            return Optional.empty();
        }
    }

    private static Object read(Method method, Object instance) {
        try {
            Object value = method.invoke(instance);
            return value instanceof Optional<?> optional ? optional.orElse(null) : value;
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
            throw new IllegalStateException(e.getCause());
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }
}
