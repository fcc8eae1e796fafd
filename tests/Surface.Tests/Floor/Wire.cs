using System.Collections.Concurrent;
using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Extensions;
using Microsoft.Extensions.Logging;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>The network between tablets and program, as bad as it is told to be. A program of its own, since what a service worker asks for is out of the sight of the page's test tools.</summary>
internal sealed class Wire : IAsyncDisposable
{
    private static readonly string[] OfOneHop = ["Connection", "Keep-Alive", "Transfer-Encoding", "Upgrade", "Proxy-Connection"];

    private readonly WebApplication _app;
    private readonly Func<Uri> _program;
    private readonly int _seed;
    private readonly HttpClient _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false, UseProxy = false });
    private readonly ConcurrentDictionary<string, Talker> _talkers = new(StringComparer.Ordinal);
    private CancellationTokenSource _streams = new();

    private Wire(WebApplication app, Func<Uri> program, int seed) => (_app, _program, _seed) = (app, program, seed);

    /// <summary>What browsers open: the same for as long as this is.</summary>
    public Uri Address { get; private set; } = null!;

    /// <summary>Whether requests with entries meet faults.</summary>
    public bool IsBad { get; set; }

    /// <summary>How often each fault has happened.</summary>
    public ConcurrentDictionary<WireFault, int> Faults { get; } = new();

    /// <summary>Starts it.</summary>
    /// <param name="program">Where the program is now.</param>
    /// <param name="seed">What decides the faults.</param>
    public static async Task<Wire> StartAsync(Func<Uri> program, int seed)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        var wire = new Wire(builder.Build(), program, seed);
        wire._app.Run(wire.PassAsync);
        await wire._app.StartAsync();
        wire.Address = new Uri(wire._app.Urls.Single());
        return wire;
    }

    /// <summary>Breaks every stream of events that is open.</summary>
    public void CutStreams() => Interlocked.Exchange(ref _streams, new CancellationTokenSource()).Cancel();

    /// <summary>From now on everything arrives; what is late arrives now, after all.</summary>
    public async Task HealAsync()
    {
        IsBad = false;
        foreach (var talker in _talkers.Values) await DeliverLateAsync(talker);
    }

    public async ValueTask DisposeAsync()
    {
        CutStreams();
        await _app.DisposeAsync();
        _client.Dispose();
    }

    private async Task PassAsync(HttpContext http)
    {
        using var body = new MemoryStream();
        await http.Request.Body.CopyToAsync(body);
        var asked = new Asked(http.Request.Method, http.Request.GetEncodedPathAndQuery(), [.. http.Request.Headers], body.ToArray());
        try
        {
            if (http.Request.Path == "/sync/entries" && IsBad) await PassBadlyAsync(http, asked, _talkers.GetOrAdd(http.Request.Headers.Authorization.ToString(), _ => new Talker(_seed, _talkers.Count)));
            else await AnswerAsync(http, asked, half: false);
        }
        catch (Exception gone) when (gone is HttpRequestException or IOException or OperationCanceledException)
        {
            // The program is dead, or the tablet has gone: either way nobody hears anything.
            http.Abort();
        }
    }

    private async Task PassBadlyAsync(HttpContext http, Asked asked, Talker talker)
    {
        var (fault, delayMs) = talker.Draw();
        Faults.AddOrUpdate(fault, 1, (_, n) => n + 1);
        switch (fault)
        {
            case WireFault.LostBefore:
                http.Abort();
                return;
            case WireFault.LostAfter:
                await DropAsync(asked);
                http.Abort();
                return;
            case WireFault.Twice:
                await DropAsync(asked);
                await AnswerAsync(http, asked, half: false);
                break;
            case WireFault.Late:
                talker.Late.Enqueue(asked);
                http.Abort();
                return;
            case WireFault.Slow:
                await Task.Delay(delayMs);
                await AnswerAsync(http, asked, half: false);
                break;
            case WireFault.HalfAnswer:
                await AnswerAsync(http, asked, half: true);
                break;
            case WireFault.OtherPage:
                http.Response.ContentType = "text/html";
                await http.Response.WriteAsync("<!doctype html><title>Guest wifi</title><p>Please sign in.");
                return;
            default:
                await AnswerAsync(http, asked, half: false);
                break;
        }
        await DeliverLateAsync(talker);
    }

    private async Task DeliverLateAsync(Talker talker)
    {
        while (talker.Late.TryDequeue(out var late)) await DropAsync(late);
    }

    // It arrives; nobody hears the answer.
    private async Task DropAsync(Asked asked)
    {
        using var request = asked.To(_program());
        using var answer = await _client.SendAsync(request);
        await answer.Content.ReadAsByteArrayAsync();
    }

    private async Task AnswerAsync(HttpContext http, Asked asked, bool half)
    {
        using var cut = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted, _streams.Token);
        using var request = asked.To(_program());
        using var answer = await _client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, cut.Token);
        http.Response.StatusCode = (int)answer.StatusCode;
        foreach (var (name, values) in answer.Headers.Concat(answer.Content.Headers))
            if (!OfOneHop.Contains(name, StringComparer.OrdinalIgnoreCase)) http.Response.Headers[name] = values.ToArray();
        await using var stream = await answer.Content.ReadAsStreamAsync(cut.Token);
        if (half)
        {
            using var whole = new MemoryStream();
            await stream.CopyToAsync(whole, cut.Token);
            http.Response.ContentLength = whole.Length;
            await http.Response.Body.WriteAsync(whole.GetBuffer().AsMemory(0, (int)whole.Length / 2), cut.Token);
            await http.Response.Body.FlushAsync(cut.Token);
            http.Abort();
            return;
        }
        var buffer = new byte[16 * 1024];
        while (await stream.ReadAsync(buffer, cut.Token) is var count and > 0)
        {
            await http.Response.Body.WriteAsync(buffer.AsMemory(0, count), cut.Token);
            await http.Response.Body.FlushAsync(cut.Token);
        }
    }

    /// <summary>A request as it came, to be made as often as it takes.</summary>
    private sealed record Asked(string Method, string Path, IReadOnlyList<KeyValuePair<string, Microsoft.Extensions.Primitives.StringValues>> Headers, byte[] Body)
    {
        public HttpRequestMessage To(Uri program)
        {
            var request = new HttpRequestMessage(new HttpMethod(Method), new Uri(program, Path));
            if (Body.Length > 0) request.Content = new ByteArrayContent(Body);
            // With the host the browser meant, else the program would take its own page for a stranger's.
            foreach (var (name, value) in Headers)
                if (!OfOneHop.Contains(name, StringComparer.OrdinalIgnoreCase) && !request.Headers.TryAddWithoutValidation(name, (IEnumerable<string?>)value))
                    request.Content?.Headers.TryAddWithoutValidation(name, (IEnumerable<string?>)value);
            return request;
        }
    }

    /// <summary>A device by its token, with the luck it has.</summary>
    private sealed class Talker(int seed, int number)
    {
        private readonly Random _chance = new((seed * 397) + number);

        public ConcurrentQueue<Asked> Late { get; } = new();

        public (WireFault Fault, int DelayMs) Draw()
        {
            lock (_chance)
            {
                // Two of five get through as if nothing were.
                var drawn = _chance.Next(100);
                return ((WireFault)(drawn < 40 ? 0 : 1 + ((drawn - 40) % 7)), _chance.Next(30, 700));
            }
        }
    }
}
