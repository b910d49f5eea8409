package pourwright.work;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Collectors;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.card.CardKind;
import pourwright.card.Finish;
import pourwright.card.Instrument;
import pourwright.card.MixCard;
import pourwright.card.Mold;
import pourwright.card.Person;
import pourwright.card.PourCard;
import pourwright.card.Supplier;
import pourwright.card.Vessel;
import pourwright.material.Material;
import pourwright.quantity.OutOfRange;

/**
 * Cards and materials as the text they are kept in: one JSON object with the names of the written
 * form. Reading checks what the forms check; an unknown field is refused.
 */
public final class CardText {
  private static final Map<CardKind, Class<? extends Card>> TYPES =
      Map.of(
          CardKind.MOLD, Mold.class,
          CardKind.VESSEL, Vessel.class,
          CardKind.MIX, MixCard.class,
          CardKind.FINISH, Finish.class,
          CardKind.POUR, PourCard.class,
          CardKind.CANDLE, CandleDesign.class,
          CardKind.INSTRUMENT, Instrument.class,
          CardKind.PERSON, Person.class,
          CardKind.SUPPLIER, Supplier.class);

  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .addModule(
              new SimpleModule()
                  .addSerializer(LocalDate.class, ToStringSerializer.instance)
                  .addDeserializer(LocalDate.class, new Day()))
          .build();

  private CardText() {}

  private static final class Day extends StdDeserializer<LocalDate> {
    private static final long serialVersionUID = 1L;

    Day() {
      super(LocalDate.class);
    }

    @Override
    public LocalDate deserialize(JsonParser parser, DeserializationContext context)
        throws IOException {
      return LocalDate.parse(parser.getText());
    }
  }

  /** The text of a card. */
  public static String write(Card card) {
    return text(card);
  }

  /** The text of a material. */
  public static String write(Material material) {
    return text(material);
  }

  private static String text(Object value) {
    try {
      return JSON.writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a card that cannot be written", e);
    }
  }

  /**
   * Reads a card of any kind but {@link CardKind#MATERIAL}.
   *
   * @throws OutOfRange when the text is no such card, naming the field
   */
  public static Card read(CardKind kind, String text) {
    Class<? extends Card> type = TYPES.get(kind);
    if (type == null) {
      throw new OutOfRange("kind", kind.key() + " cards are read as materials", "use material()");
    }
    return parse(text, type);
  }

  /**
   * Reads a material.
   *
   * @throws OutOfRange when the text is no material, naming the field
   */
  public static Material material(String text) {
    return parse(text, Material.class);
  }

  private static <T> T parse(String text, Class<T> type) {
    try {
      return JSON.readValue(text, type);
    } catch (JsonMappingException e) {
      if (e.getCause() instanceof OutOfRange reason) {
        throw reason;
      }
      String at =
          e.getPath().stream()
              .map(r -> r.getFieldName() == null ? "" + r.getIndex() : r.getFieldName())
              .collect(Collectors.joining("/"));
      throw new OutOfRange(at, e.getOriginalMessage(), "compare with another card of its kind");
    } catch (JsonProcessingException e) {
      throw new OutOfRange("", e.getOriginalMessage(), "give one JSON object");
    }
  }
}
