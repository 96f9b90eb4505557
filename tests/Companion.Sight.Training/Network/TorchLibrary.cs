using System.Buffers.Binary;
using System.Text;

namespace Companion.Sight.Training.Network;

/// <summary>
/// Lets TorchSharp load where the C++ library is that of GCC 12, as in Debian 12. Its own library asks for a version of GCC 13, for one
/// symbol that nothing calls; when that wish is marked as weak, the loader passes over it (ELF, "Symbol Versioning" in the Linux
/// Standard Base, 10.7: a version need with the flag VER_FLG_WEAK).
/// </summary>
internal static class TorchLibrary
{
    private const string Name = "libLibTorchSharp.so", Version = "GLIBCXX_3.4.32";
    private const int VersionNeeds = 0x6ffffffe;
    private const byte Weak = 2;

    /// <summary>To be called before anything of TorchSharp is used.</summary>
    public static void Loosen()
    {
        foreach (var file in Directory.GetFiles(AppContext.BaseDirectory, Name, SearchOption.AllDirectories))
        {
            var library = File.ReadAllBytes(file);
            if (Need(library) is not { } at || library[at + 4] == Weak)
                continue;
            library[at + 4] = Weak;
            File.WriteAllBytes(file, library);
        }
    }

    /// <summary>Where the need stands: a hash of four bytes, flags of two, and more.</summary>
    private static int? Need(ReadOnlySpan<byte> library)
    {
        var sections = (int)BinaryPrimitives.ReadUInt64LittleEndian(library[0x28..]);
        for (var section = BinaryPrimitives.ReadUInt16LittleEndian(library[0x3c..]) - 1; section >= 0; section--)
        {
            var header = library[(sections + 64 * section)..];
            if (Number(header, 4) != VersionNeeds)
                continue;
            var names = library[Number(library, sections + 64 * Number(header, 40) + 24)..];
            for (var (entry, left) = (Number(header, 24), Number(header, 44)); left > 0; left--, entry += Number(library, entry + 12))
            {
                var need = entry + Number(library, entry + 8);
                for (var needs = BinaryPrimitives.ReadUInt16LittleEndian(library[(entry + 2)..]); needs > 0; needs--, need += Number(library, need + 12))
                    if (names[Number(library, need + 8)..].StartsWith(Encoding.ASCII.GetBytes(Version + "\0")))
                        return need;
            }
        }

        return null;
    }

    private static int Number(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadInt32LittleEndian(bytes[at..]);
}
