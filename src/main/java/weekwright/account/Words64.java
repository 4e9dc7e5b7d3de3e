package weekwright.account;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Words of 64 bits in bytes, the lowest byte first. */
final class Words64 {
    private static final VarHandle LONGS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private Words64() {}

    static long get(byte[] bytes, int at) {
        return (long) LONGS.get(bytes, at);
    }

    static void put(byte[] bytes, int at, long word) {
        LONGS.set(bytes, at, word);
    }
}
