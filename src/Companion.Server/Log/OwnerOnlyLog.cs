using System.Text;
using Companion.Server.Data;
using Serilog.Sinks.File;

namespace Companion.Server.Log;

/// <summary>Closes each log file to other users as it is opened, and lets no full disk reach the program through it.</summary>
internal sealed class OwnerOnlyLog : FileLifecycleHooks
{
    /// <inheritdoc/>
    public override Stream OnFileOpened(string path, Stream underlyingStream, Encoding encoding)
    {
        OwnerOnly.Close(path);
        return new LossyStream(underlyingStream);
    }
}
