using System.Globalization;
using System.Text.Json;
using Microsoft.AspNetCore.Http.Features;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;

namespace Slantwise.Host.Sync;

/// <summary>Server-sent events to one device, as long as it reads them.</summary>
/// <remarks>Source: [WHATWG2026] section 9.2.</remarks>
internal static class EventStream
{
    private static readonly TimeSpan Heartbeat = TimeSpan.FromSeconds(15);

    // What happens within a moment goes out together.
    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(100);

    // That a device was seen is told to teachers every two seconds, without anything else having happened.
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(2);

    // A reader that takes nothing for so long is let go: it comes back and is told all it missed.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    public static async Task SendAsync(HttpContext http)
    {
        var member = await SyncCaller.FindAsync(http);
        using var watch = member.Watch();
        using var end = CancellationTokenSource.CreateLinkedTokenSource(
            http.RequestAborted, http.RequestServices.GetRequiredService<IHostApplicationLifetime>().ApplicationStopping);
        var clock = http.RequestServices.GetRequiredService<TimeProvider>();
        var language = CultureInfo.CurrentUICulture;
        http.Response.ContentType = "text/event-stream; charset=utf-8";
        http.Response.Headers.CacheControl = "no-store";
        http.Response.Headers["X-Accel-Buffering"] = "no";
        http.Features.Get<IHttpResponseBodyFeature>()?.DisableBuffering();
        try
        {
            var saidAt = clock.GetTimestamp();
            while (true)
            {
                var news = watch.Take(language);
                var text = news.IsEmpty ? "" : Event("state", news.State) + Event("news", news.News);
                if (text.Length == 0 && clock.GetElapsedTime(saidAt) >= Heartbeat)
                {
                    text = ": \n\n";
                    member.See();
                }
                if (text.Length > 0)
                {
                    await WriteAsync(http, text, end.Token);
                    saidAt = clock.GetTimestamp();
                }
                // Thousands of tablets listen at once: they wake when there is something for them, or to be told that the line still stands.
                var most = watch.IsTeachers ? Look : TimeSpan.FromTicks(Math.Max(Moment.Ticks, (Heartbeat - clock.GetElapsedTime(saidAt)).Ticks));
                if (await watch.WaitAsync(most, end.Token)) await Task.Delay(Moment, clock, end.Token);
            }
        }
        catch (OperationCanceledException) when (end.IsCancellationRequested)
        {
            // The device has gone, or the program ends.
        }
        catch (OperationCanceledException)
        {
            http.Abort();
        }
    }

    private static string Event<T>(string name, T? data)
        where T : class => data is null ? "" : $"event: {name}\ndata: {JsonSerializer.Serialize(data, EntryJson.Options)}\n\n";

    private static async Task WriteAsync(HttpContext http, string text, CancellationToken cancel)
    {
        using var slow = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        slow.CancelAfter(Patience);
        await http.Response.WriteAsync(text, slow.Token);
        await http.Response.Body.FlushAsync(slow.Token);
    }
}
