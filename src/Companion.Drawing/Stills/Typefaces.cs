using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>A font in two weights.</summary>
internal sealed record Typefaces(SKTypeface Regular, SKTypeface Bold) : IDisposable
{
    private const string RegularFile = "DejaVuSans.ttf";
    private const string BoldFile = "DejaVuSans-Bold.ttf";

    /// <summary>The fonts of the assembly, whole. They are never disposed.</summary>
    internal static Typefaces Shipped { get; } = new(Load(Read(RegularFile)), Load(Read(BoldFile)));

    /// <summary>The fonts of the assembly as they come out of a change of their files.</summary>
    internal static Typefaces Changed(Func<byte[], SKTypeface, byte[]> change) => new(
        Load(change(Read(RegularFile), Shipped.Regular)),
        Load(change(Read(BoldFile), Shipped.Bold)));

    public void Dispose()
    {
        Regular.Dispose();
        Bold.Dispose();
    }

    private static byte[] Read(string name)
    {
        using var file = Resource.Open(name);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    private static SKTypeface Load(byte[] file)
    {
        using var data = SKData.CreateCopy(file);
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException("This is not a font.");
    }
}
