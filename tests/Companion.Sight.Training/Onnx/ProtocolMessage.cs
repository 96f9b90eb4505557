using System.Text;

namespace Companion.Sight.Training.Onnx;

/// <summary>A message in the wire format of protocol buffers: fields by number, one after the other.</summary>
internal sealed class ProtocolMessage
{
    private readonly List<byte> _bytes = [];

    /// <summary>A whole number.</summary>
    public ProtocolMessage Add(int field, long value) => Tag(field, 0).Number((ulong)value);

    /// <summary>A text.</summary>
    public ProtocolMessage Add(int field, string value) => Add(field, Encoding.UTF8.GetBytes(value));

    /// <summary>Another message.</summary>
    public ProtocolMessage Add(int field, ProtocolMessage value) => Add(field, value.ToArray());

    /// <summary>Bytes.</summary>
    public ProtocolMessage Add(int field, byte[] value)
    {
        Tag(field, 2).Number((ulong)value.Length);
        _bytes.AddRange(value);
        return this;
    }

    /// <summary>A field that is there once for each of several whole numbers.</summary>
    public ProtocolMessage AddEach(int field, params ReadOnlySpan<long> values)
    {
        foreach (var value in values)
            Add(field, value);
        return this;
    }

    /// <summary>The bytes.</summary>
    public byte[] ToArray() => [.. _bytes];

    private ProtocolMessage Tag(int field, int kind) => Number((ulong)(field << 3 | kind));

    private ProtocolMessage Number(ulong value)
    {
        for (; value >= 0x80; value >>= 7)
            _bytes.Add((byte)(value | 0x80));
        _bytes.Add((byte)value);
        return this;
    }
}
