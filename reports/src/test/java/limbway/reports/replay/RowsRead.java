package limbway.reports.replay;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Base64;

import com.fasterxml.jackson.databind.JsonNode;

/** Reads rows of numbers back by what their text says of itself, and by nothing else. */
final class RowsRead {

    private RowsRead() {}

    static double[] of(JsonNode text) {
        String[] typeAndNumbers = text.asText().split(":", 2);
        String type = typeAndNumbers[0];
        ByteBuffer bytes =
                ByteBuffer.wrap(Base64.getDecoder().decode(typeAndNumbers[1])).order(ByteOrder.LITTLE_ENDIAN);
        int width = Integer.parseInt(type.substring(1)) / 8;
        double[] numbers = new double[bytes.capacity() / width];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = switch (type) {
                case "u8" -> Byte.toUnsignedInt(bytes.get());
                case "i8" -> bytes.get();
                case "u16" -> Short.toUnsignedInt(bytes.getShort());
                case "i16" -> bytes.getShort();
                case "u32" -> Integer.toUnsignedLong(bytes.getInt());
                case "f32" -> bytes.getFloat();
                default -> throw new IllegalArgumentException(type);
            };
        }
        return numbers;
    }
}
