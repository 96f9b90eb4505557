using System.IO.Pipelines;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc;

/// <summary>A connection to a server, over TLS unless the settings say otherwise.</summary>
internal sealed class IrcConnection : IAsyncDisposable
{
    // How long a server may take to answer the door, or to take a line.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly SemaphoreSlim _turn = new(1);
    private readonly TimeProvider _clock;
    private readonly Stream _stream;

    private IrcConnection(Stream stream, TimeProvider clock)
    {
        (_stream, _clock) = (stream, clock);
        Lines = new(PipeReader.Create(stream));
    }

    /// <summary>The lines that come.</summary>
    public LineReader Lines { get; }

    /// <summary>Connects.</summary>
    /// <param name="settings">Where to.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="SocketException">Nobody answers.</exception>
    /// <exception cref="System.Security.Authentication.AuthenticationException">The server's certificate is not trusted.</exception>
    public static async Task<IrcConnection> Open(IrcSettings settings, TimeProvider clock, CancellationToken stop)
    {
        using var late = new CancellationTokenSource(Patience, clock);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(late.Token, stop);
        var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        try
        {
            await socket.ConnectAsync(settings.Server, settings.Port, either.Token);
            var open = new NetworkStream(socket, ownsSocket: true);
            return new(settings.Tls ? await Encrypt(open, settings, either.Token) : open, clock);
        }
        catch
        {
            socket.Dispose();
            throw;
        }
    }

    /// <summary>Sends a line. Several may be sent at once; none is cut by another.</summary>
    /// <param name="message">The line.</param>
    /// <param name="stop">Stops it.</param>
    public async Task Send(IrcMessage message, CancellationToken stop)
    {
        var line = Encoding.UTF8.GetBytes($"{message}\r\n");
        using var late = new CancellationTokenSource(Patience, _clock);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(late.Token, stop);
        await _turn.WaitAsync(either.Token);
        try
        {
            await _stream.WriteAsync(line, either.Token);
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        _turn.Dispose();
        return _stream.DisposeAsync();
    }

    private static async Task<SslStream> Encrypt(Stream open, IrcSettings settings, CancellationToken stop)
    {
        var options = new SslClientAuthenticationOptions { TargetHost = settings.Server };
        if (settings.Certificate.Length > 0)
        {
            options.CertificateChainPolicy = new()
            {
                TrustMode = X509ChainTrustMode.CustomRootTrust,
                RevocationMode = X509RevocationMode.NoCheck, // a certificate of one's own has no list of revoked ones
            };
            options.CertificateChainPolicy.CustomTrustStore.ImportFromPemFile(settings.Certificate);
        }

        var stream = new SslStream(open);
        await stream.AuthenticateAsClientAsync(options, stop);
        return stream;
    }
}
