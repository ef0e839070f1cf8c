package limbway.reports.replay;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Base64;

/** Rows of numbers as text: named by their type, little-endian, in base64. */
final class Rows {

    private static final int BYTE_VALUES = 1 << 8;
    private static final int SHORT_VALUES = 1 << 16;
    private static final int INT_BYTES = 4;

    private Rows() {}

    /** Whole numbers of 0 or more in the narrowest type that holds them all. */
    static String unsigned(long[] numbers) {
        long most = Arrays.stream(numbers).max().orElse(0);
        long least = Arrays.stream(numbers).min().orElse(0);
        if (least < 0 || most >= 1L << 32) {
            throw new IllegalArgumentException(
                    "row: numbers from " + least + " to " + most + ", allowed 0 to " + ((1L << 32) - 1));
        }
        int bytes = most < BYTE_VALUES ? 1 : most < SHORT_VALUES ? 2 : INT_BYTES;
        byte[] row = new byte[numbers.length * bytes];
        ByteBuffer into = into(row);
        for (long number : numbers) {
            put(into, number, bytes);
        }
        return "u" + 8 * bytes + ":" + base64(row);
    }

    static String i16(int[] numbers) {
        byte[] row = new byte[numbers.length * 2];
        ByteBuffer into = into(row);
        for (int number : numbers) {
            if (number != (short) number) {
                throw new IllegalArgumentException("row: number = " + number + ", allowed -32768 to 32767");
            }
            into.putShort((short) number);
        }
        return "i16:" + base64(row);
    }

    static String i8(int[] numbers) {
        byte[] row = new byte[numbers.length];
        ByteBuffer into = into(row);
        for (int number : numbers) {
            if (number != (byte) number) {
                throw new IllegalArgumentException("row: number = " + number + ", allowed -128 to 127");
            }
            into.put((byte) number);
        }
        return "i8:" + base64(row);
    }

    static String f32(double[] numbers) {
        byte[] row = new byte[numbers.length * INT_BYTES];
        ByteBuffer into = into(row);
        for (double number : numbers) {
            into.putFloat((float) number);
        }
        return "f32:" + base64(row);
    }

    private static void put(ByteBuffer into, long number, int bytes) {
        switch (bytes) {
            case 1 -> into.put((byte) number);
            case 2 -> into.putShort((short) number);
            default -> into.putInt((int) number);
        }
    }

    private static ByteBuffer into(byte[] row) {
        return ByteBuffer.wrap(row).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static String base64(byte[] row) {
        return Base64.getEncoder().encodeToString(row);
    }
}
