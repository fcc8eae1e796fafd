using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Slantwise.Host.Answers;

namespace Slantwise.Host.Serving;

/// <summary>The certificate the program answers https with, from PEM files.</summary>
internal sealed class ServerCertificate
{
    private readonly X509Certificate2 _own;
    private readonly X509Certificate2Collection _chain;

    private ServerCertificate(X509Certificate2 own, X509Certificate2Collection chain) => (_own, _chain) = (own, chain);

    /// <summary>Reads one.</summary>
    /// <param name="file">The certificate, its own first, those between it and the authority after it.</param>
    /// <param name="keyFile">Its private key, not encrypted.</param>
    /// <exception cref="Refusal">A file that cannot be read, or that does not hold what it should.</exception>
    public static ServerCertificate Read(string file, string keyFile)
    {
        try
        {
            using var read = X509Certificate2.CreateFromPemFile(file, keyFile);
            // Windows answers with no certificate whose key was not stored once.
            var own = X509CertificateLoader.LoadPkcs12(read.Export(X509ContentType.Pkcs12), null);
            var chain = new X509Certificate2Collection();
            chain.ImportFromPemFile(file);
            return new ServerCertificate(own, chain);
        }
        catch (Exception failure) when (failure is CryptographicException or IOException or UnauthorizedAccessException)
        {
            throw Refusal.Of("CertificateUnreadable", file, keyFile);
        }
    }

    /// <summary>Whether it was made for a host name.</summary>
    public bool Names(string host) => _own.MatchesHostname(host.Trim('[', ']'));

    /// <summary>Answers https where the program listens.</summary>
    public void PutOn(ListenOptions listen) => listen.UseHttps(https =>
    {
        https.ServerCertificate = _own;
        https.ServerCertificateChain = _chain;
    });
}
