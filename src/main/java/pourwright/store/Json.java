package pourwright.store;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.jsontype.NamedType;
import com.fasterxml.jackson.databind.jsontype.TypeResolverBuilder;
import com.fasterxml.jackson.databind.jsontype.impl.StdTypeResolverBuilder;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Records of the craft as JSON text and back, without the craft knowing: fields by the names of the
 * record's components, times as ISO text, and for a sealed type the simple name of the record under
 * {@code is}.
 */
final class Json {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .annotationIntrospector(new Sealed())
          .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .addModule(times())
          .build();

  static {
    MAPPER
        .getFactory()
        .setStreamReadConstraints(
            StreamReadConstraints.builder().maxStringLength(64_000_000).build());
  }

  private Json() {}

  /** Writes a record. */
  static String write(Object value, Class<?> type) {
    try {
      return MAPPER.writerFor(type).writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(type.getSimpleName() + " cannot be written as JSON", e);
    }
  }

  /** House: what is read again and again fits, the bodies of years of batches do not. */
  private static final int KEPT_CHARACTERS = 1_000_000;

  private static final Parsed READ = new Parsed(KEPT_CHARACTERS);

  /** Reads a record; records do not change, so one that was read before is given again. */
  static <T> T read(String text, Class<T> type) {
    return READ.read(text, type, t -> parse(t, type));
  }

  private static <T> T parse(String text, Class<T> type) {
    try {
      return MAPPER.readValue(text, type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(
          "a " + type.getSimpleName() + " in the books cannot be read: " + e.getOriginalMessage(),
          e);
    }
  }

  /** A plain mapper for manifests and archives. */
  static ObjectMapper mapper() {
    return MAPPER;
  }

  private static SimpleModule times() {
    SimpleModule module = new SimpleModule("times");
    text(module, Instant.class, Instant::parse);
    text(module, LocalDate.class, LocalDate::parse);
    text(module, LocalTime.class, LocalTime::parse);
    text(module, Duration.class, Duration::parse);
    return module;
  }

  private static <T> void text(SimpleModule module, Class<T> type, Function<String, T> reader) {
    module.addSerializer(type, ToStringSerializer.instance);
    module.addDeserializer(type, new FromText<>(type, reader));
  }

  private static final class FromText<T> extends StdDeserializer<T> {
    private static final long serialVersionUID = 1L;
    private final transient Function<String, T> reader;

    FromText(Class<T> type, Function<String, T> reader) {
      super(type);
      this.reader = reader;
    }

    @Override
    public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
      return reader.apply(parser.getText());
    }
  }

  /** Gives every sealed type of the house the name of its record, so that it can be read again. */
  private static final class Sealed extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1L;

    @Override
    public @Nullable TypeResolverBuilder<?> findTypeResolver(
        MapperConfig<?> config, AnnotatedClass annotated, JavaType type) {
      if (!belongsToSealed(annotated.getRawType())) {
        return super.findTypeResolver(config, annotated, type);
      }
      return new StdTypeResolverBuilder()
          .init(JsonTypeInfo.Id.NAME, null)
          .inclusion(JsonTypeInfo.As.PROPERTY)
          .typeProperty("is");
    }

    @Override
    public @Nullable List<NamedType> findSubtypes(Annotated annotated) {
      if (!belongsToSealed(annotated.getRawType())) {
        return super.findSubtypes(annotated);
      }
      List<NamedType> named = new ArrayList<>();
      collect(annotated.getRawType(), named);
      return named;
    }

    private static boolean belongsToSealed(Class<?> type) {
      return type.getName().startsWith("pourwright.") && type.isInterface() && type.isSealed();
    }

    private static void collect(Class<?> type, List<NamedType> named) {
      for (Class<?> permitted : type.getPermittedSubclasses()) {
        if (permitted.isSealed()) {
          collect(permitted, named);
        } else {
          named.add(new NamedType(permitted, permitted.getSimpleName()));
        }
      }
    }
  }
}
