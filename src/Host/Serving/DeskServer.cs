using System.Net;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Slantwise.Desk;
using Slantwise.Desk.Pages.Scans;
using Slantwise.Host.Answers;
using Slantwise.Host.Floor;
using Slantwise.Host.Joining;
using Slantwise.Host.Printing;
using Slantwise.Host.Scanning;
using Slantwise.Host.Sync;
using Slantwise.Host.Tables;
using Slantwise.Host.Words;
using Slantwise.Paper.Reading;
using Slantwise.Records;
using Slantwise.Records.Floor;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Serving;

/// <summary>The desk and everything beside it as one web program.</summary>
internal static class DeskServer
{
    // A class of 30 with sheets of several pages, a photo each.
    private const int MostFilesAtOnce = 200;

    /// <summary>Puts it together.</summary>
    /// <param name="store">Where the records are.</param>
    /// <param name="folder">Where it keeps its keys.</param>
    /// <param name="address">The address to listen on.</param>
    /// <param name="port">The port; 0 for any free one.</param>
    /// <param name="certificate">What it answers https with; none for plain http.</param>
    /// <param name="isDeskOpen">Whether the desk answers everybody who reaches it, and not this machine alone.</param>
    public static WebApplication Of(IStore store, DataFolder folder, IPAddress address, int port, ServerCertificate? certificate = null, bool isDeskOpen = false)
    {
        // Not the user's environment: the same desk wherever it is started from, and no settings but the command's.
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = "slantwise",
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.Configuration.Sources.Clear();
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(address, port, listen => certificate?.PutOn(listen));
            // The desk answers this machine: with one address of the network alone it could not be reached.
            if (!IsReachedFromHere(address)) kestrel.Listen(IPAddress.Loopback, port, listen => certificate?.PutOn(listen));
        });
        SetQuiet(builder.Logging);
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(3));
        builder.Services.AddDataProtection()
            .SetApplicationName("slantwise")
            .PersistKeysToFileSystem(Directory.CreateDirectory(folder.KeysFolder));
        builder.Services.AddSingleton(store);
        builder.Services.AddSingleton(TimeProvider.System);
        var limits = new ReadingLimits();
        builder.Services.AddSingleton(limits);
        builder.Services.AddSingleton(new UploadLimits(limits.MaxByteCount, MostFilesAtOnce));
        builder.Services.AddSingleton(services => new UploadFolder(folder, services.GetRequiredService<UploadLimits>()));
        builder.Services.AddSingleton<PileReading>();
        builder.Services.AddSingleton<IPageReader, PageReader>();
        builder.Services.AddSingleton(MachineAddresses.Of(address));
        builder.Services.AddDesk();
        builder.Services.AddSync();
        builder.Services.AddSingleton(services => new FloorHub(
            store, services.GetRequiredService<TimeProvider>(), RandomNumberGenerator.GetInt32, FloorVersion.Text));

        var app = builder.Build();
        app.UseSecurityHeaders();
        app.UseKnownHosts(address, certificate);
        app.MapDesk();
        if (!IPAddress.IsLoopback(address) && !isDeskOpen) app.UseDeskGate();
        app.MapDeskKey();
        app.MapSync();
        app.MapPrints();
        app.MapGroupPrint();
        app.MapFonts();
        app.MapTables();
        app.MapScans();
        app.MapFloor();
        app.MapJoining();
        app.MapLessonFile();
        return app;
    }

    /// <summary>Starts it.</summary>
    /// <returns>The address to open in a browser.</returns>
    public static async Task<string> StartAsync(WebApplication app, int port, CancellationToken cancel)
    {
        try
        {
            await app.StartAsync(cancel);
        }
        catch (IOException failure) when (failure.InnerException is AddressInUseException)
        {
            throw new Refusal(HostWords.Say("PortBusy", port, port == ushort.MaxValue ? port - 1 : port + 1), Refusal.NotPossible);
        }
        return app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
    }

    /// <summary>Where the desk is opened on this machine.</summary>
    /// <param name="app">The program, started.</param>
    public static string DeskAddress(WebApplication app)
    {
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Select(a => new Uri(a)).ToList();
        var here = addresses.FirstOrDefault(a => a.IsLoopback) ?? addresses[0];
        return here.Host is "0.0.0.0" or "[::]" ? $"{here.Scheme}://127.0.0.1:{here.Port}" : here.GetLeftPart(UriPartial.Authority);
    }

    private static bool IsReachedFromHere(IPAddress address) =>
        IPAddress.IsLoopback(address) || address.Equals(IPAddress.Any) || address.Equals(IPAddress.IPv6Any);

    private static void SetQuiet(ILoggingBuilder logging)
    {
        logging.ClearProviders();
        logging.AddSimpleConsole(console => console.SingleLine = true);
        // Standard output belongs to the command's own words.
        logging.Services.Configure<Microsoft.Extensions.Logging.Console.ConsoleLoggerOptions>(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        logging.SetMinimumLevel(LogLevel.Warning);
        // Said once a start, and nothing a teacher can do: keys lie unencrypted in the owner's folder; a build has no web root.
        logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        logging.AddFilter("Microsoft.AspNetCore.StaticFiles", LogLevel.Error);
        logging.AddFilter("Microsoft.AspNetCore.StaticAssets", LogLevel.Error);
        logging.AddFilter("Microsoft.EntityFrameworkCore", LogLevel.Error);
        // A start that fails is said by the command.
        logging.AddFilter("Microsoft.Extensions.Hosting", LogLevel.Critical);
    }
}
