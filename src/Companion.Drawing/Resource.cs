namespace Companion.Drawing;

/// <summary>The files that travel inside the assembly.</summary>
internal static class Resource
{
    internal static Stream Open(string name) => typeof(Resource).Assembly.GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"The assembly was built without its resource '{name}'.");
}
