using System.Runtime.InteropServices;

namespace Companion.Sight.Training.Network;

/// <summary>Numbers at a fixed place in memory, aligned for vectors. Lives as long as the training.</summary>
internal sealed unsafe class Buffer
{
    /// <summary>Zeros.</summary>
    public Buffer(int length)
    {
        Length = length;
        At = (float*)NativeMemory.AlignedAlloc((nuint)length * sizeof(float), 64);
        Span.Clear();
    }

    /// <summary>How many.</summary>
    public int Length { get; }

    /// <summary>The first one.</summary>
    public float* At { get; }

    /// <summary>All of them.</summary>
    public Span<float> Span => new(At, Length);
}
