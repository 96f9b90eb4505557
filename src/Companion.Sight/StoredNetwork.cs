using Microsoft.ML.OnnxRuntime;

namespace Companion.Sight;

/// <summary>A network that was trained before, ready to read images. May be used by several threads at once.</summary>
internal sealed class StoredNetwork : IDisposable
{
    private readonly InferenceSession _session;

    /// <summary>Loads one.</summary>
    /// <param name="model">An ONNX model from <c>ink</c>, images by what each has, to <c>certainty</c>, images by classes.</param>
    public StoredNetwork(byte[] model)
    {
        // A batch takes some milliseconds: more threads would take them from the live loop for little.
        using var options = new SessionOptions { IntraOpNumThreads = 1, InterOpNumThreads = 1 };
        _session = new(model, options);
    }

    /// <summary>Reads images.</summary>
    /// <param name="images">The images, one after the other.</param>
    /// <param name="shape">How many there are, and how large each is along its axes.</param>
    /// <param name="read">What to make of the certainties, images by classes, row by row.</param>
    public T Read<T>(float[] images, long[] shape, Func<ReadOnlySpan<float>, T> read)
    {
        using var input = OrtValue.CreateTensorValueFromMemory(images, shape);
        using var run = new RunOptions();
        using var outputs = _session.Run(run, ["ink"], [input], ["certainty"]);
        return read(outputs[0].GetTensorDataAsSpan<float>());
    }

    /// <summary>The model that the companion brings along under a name.</summary>
    /// <param name="name">The name of its file.</param>
    public static byte[] Brought(string name)
    {
        using var stream = typeof(StoredNetwork).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The network {name} is missing from the assembly.");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }

    /// <inheritdoc/>
    public void Dispose() => _session.Dispose();
}
