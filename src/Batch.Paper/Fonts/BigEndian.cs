using System.Buffers.Binary;

namespace Batch.Paper.Fonts;

/// <summary>Numbers as font files write them: the highest byte first (ISO/IEC 14496-22).</summary>
internal static class BigEndian
{
    public static byte[] U16(params int[] values) => [.. values.SelectMany(value => new[] { (byte)(value >> 8), (byte)value })];

    public static byte[] U32(params uint[] values)
    {
        var bytes = new byte[4 * values.Length];
        for (var i = 0; i < values.Length; i++) BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(4 * i), values[i]);
        return bytes;
    }

    /// <summary>The bytes of a table, filled up with zeros to a multiple of four.</summary>
    public static byte[] Padded(byte[] bytes) => [.. bytes, .. new byte[(4 - bytes.Length % 4) % 4]];
}
