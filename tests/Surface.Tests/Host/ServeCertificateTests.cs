using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Slantwise.Surface.Tests.Host;

public sealed class ServeCertificateTests
{
    [Fact]
    public async Task Serve_WithACertificate_AnswersHttpsUnderItsNames()
    {
        using var folder = new TempFolder();
        var (certificate, key, print) = Make(folder);
        await using var served = await ServedHost.StartAsync(isDemo: false, more: ["--certificate", certificate, "--key", key]);
        Assert.Equal("https", served.Address.Scheme);
        using var handler = new HttpClientHandler { ServerCertificateCustomValidationCallback = (_, shown, _, _) => shown!.GetCertHashString() == print };
        using var client = new HttpClient(handler) { BaseAddress = served.Address, Timeout = HostProgram.Patience };
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(null));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync("gym.example"));
        Assert.Equal(HttpStatusCode.BadRequest, await StatusAsync("evil.example"));

        async Task<HttpStatusCode> StatusAsync(string? host)
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, "/");
            if (host is not null) request.Headers.Host = host;
            return (await client.SendAsync(request, TestContext.Current.CancellationToken)).StatusCode;
        }
    }

    [Fact]
    public async Task Serve_WithHalfACertificate_SaysWhatBelongsTogether()
    {
        using var folder = new TempFolder();
        var (certificate, key, _) = Make(folder);
        await RefusesAsync("go together", "--certificate", certificate);
        await RefusesAsync("go together", "--key", key);
        await RefusesAsync("can be read", "--certificate", certificate, "--key", folder.Write("empty.key", ""));
        await RefusesAsync("can be read", "--certificate", folder.At("missing.crt"), "--key", key);

        async Task RefusesAsync(string words, params string[] arguments)
        {
            var run = await HostProgram.RunAsync(["serve", "--no-demo", "--port", "0", "--data", folder.At("data"), .. arguments]);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains(words, Assert.Single(run.ErrorLines));
        }
    }

    private static (string Certificate, string Key, string Print) Make(TempFolder folder)
    {
        using var key = RSA.Create(2048);
        var request = new CertificateRequest("CN=test", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        var names = new SubjectAlternativeNameBuilder();
        names.AddDnsName("gym.example");
        names.AddIpAddress(IPAddress.Loopback);
        request.CertificateExtensions.Add(names.Build());
        using var certificate = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(2));
        return (folder.Write("own.crt", certificate.ExportCertificatePem()), folder.Write("own.key", key.ExportPkcs8PrivateKeyPem()), certificate.GetCertHashString());
    }
}
