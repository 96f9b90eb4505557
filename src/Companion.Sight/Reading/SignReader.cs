using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>
/// Reads signs among what stands around them with a small network, which <c>tests/Companion.Sight.Training</c> makes. May be used by
/// several threads at once.
/// </summary>
internal sealed class SignReader : IDisposable
{
    // The nine digits, no digit, a line through it, and something over it.
    private const int Classes = Digit.Count + 3;

    // More are read in several goes: their images would not stay in the processor's memory.
    private const int Most = 64;

    private static readonly Lazy<SignReader> _standard = new(() => new(StoredNetwork.Brought("signs.onnx")));

    private readonly StoredNetwork _network;

    /// <summary>Makes a reader.</summary>
    /// <param name="network">An ONNX model from <c>ink</c>, signs by planes by rows by columns, to <c>certainty</c>, signs by classes.</param>
    public SignReader(byte[] network) => _network = new(network);

    /// <summary>The reader with the network that the companion brings along. It is loaded when first asked for, and for all.</summary>
    public static SignReader Standard => _standard.Value;

    /// <summary>Reads signs, in their order.</summary>
    /// <param name="signs">The signs.</param>
    public IReadOnlyList<SignReading> Read(IReadOnlyList<Sign> signs)
    {
        var readings = new List<SignReading>(signs.Count);
        foreach (var some in signs.Chunk(Most))
        {
            var images = new float[some.Length * SignImage.Values];
            for (var index = 0; index < some.Length; index++)
                SignImage.Draw(some[index], images.AsSpan(index * SignImage.Values, SignImage.Values));
            readings.AddRange(Read(images, some.Length));
        }

        return readings;
    }

    /// <summary>Reads images of signs, in their order.</summary>
    /// <param name="images">The images, one after the other, as <see cref="SignImage"/> draws them.</param>
    /// <param name="count">How many.</param>
    public SignReading[] Read(float[] images, int count) => _network.Read(images, [count, SignImage.Planes, SignImage.Side, SignImage.Side], certainties =>
    {
        var readings = new SignReading[count];
        for (var index = 0; index < count; index++)
        {
            var all = certainties.Slice(index * Classes, Classes);
            readings[index] = new([.. all[..Digit.Count]], all[^2], all[^1]);
        }

        return readings;
    });

    /// <inheritdoc/>
    public void Dispose() => _network.Dispose();
}
