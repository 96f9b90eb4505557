namespace Companion.Server.Tests.Running;

/// <summary>Files as certificates lie in: open to others, or closed to them where they hold a secret.</summary>
internal static class CertificateFile
{
    public static Task WriteOpen(string path, string content) => Write(path, System.Text.Encoding.UTF8.GetBytes(content), isSecret: false);

    public static Task WriteOpen(string path, byte[] content) => Write(path, content, isSecret: false);

    public static Task WriteSecret(string path, string content) => Write(path, System.Text.Encoding.UTF8.GetBytes(content), isSecret: true);

    private static async Task Write(string path, byte[] content, bool isSecret)
    {
        await File.WriteAllBytesAsync(path, content, TestContext.Current.CancellationToken);
        if (!OperatingSystem.IsWindows())
        {
            var owner = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            File.SetUnixFileMode(path, isSecret ? owner : owner | UnixFileMode.GroupRead | UnixFileMode.OtherRead);
        }
    }
}
