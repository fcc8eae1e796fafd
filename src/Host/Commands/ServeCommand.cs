using System.CommandLine;
using System.Net;
using Slantwise.Host.Answers;
using Slantwise.Host.Serving;
using Slantwise.Host.Words;

namespace Slantwise.Host.Commands;

/// <summary><c>serve</c>: the desk in a browser on this machine, until Ctrl-C.</summary>
internal static class ServeCommand
{
    private const int UsualPort = 5080;

    public static Command Of(GlobalOptions options)
    {
        var port = new Option<int>("--port") { Description = HostWords.Say("OptionPort"), HelpName = "N", DefaultValueFactory = _ => UsualPort };
        var isEmpty = new Option<bool>("--no-demo") { Description = HostWords.Say("OptionNoDemo") };
        var bind = new Option<string>("--bind") { Description = HostWords.Say("OptionBind"), HelpName = "ADDRESS", DefaultValueFactory = _ => "127.0.0.1" };
        var certificate = new Option<string?>("--certificate") { Description = HostWords.Say("OptionCertificate"), HelpName = "FILE" };
        var key = new Option<string?>("--key") { Description = HostWords.Say("OptionKey"), HelpName = "FILE" };
        var isOpen = new Option<bool>("--open-desk") { Description = HostWords.Say("OptionOpenDesk") };
        var command = new Command("serve", HostWords.Say("ServeHelp")) { port, isEmpty, bind, certificate, key, isOpen };
        command.SetAction(async (parsed, cancel) =>
        {
            var chosen = parsed.GetValue(port);
            if (chosen is < 0 or > ushort.MaxValue) throw Refusal.Of("PortRange", chosen);
            if (!IPAddress.TryParse(parsed.GetValue(bind), out var address)) throw Refusal.Of("BindNotAnAddress", parsed.GetValue(bind));
            var https = (parsed.GetValue(certificate), parsed.GetValue(key)) switch
            {
                (null, null) => null,
                ({ } file, { } keyFile) => ServerCertificate.Read(Path.GetFullPath(file), Path.GetFullPath(keyFile)),
                _ => throw Refusal.Of("CertificateHalf"),
            };

            var folder = DataFolder.Of(parsed, options);
            using var alone = OpenStore.IsPostgres(parsed, options) ? null : folder.Lock();
            await using var open = await OpenStore.MakeAsync(parsed, options, cancel);
            open.Folder.Make();
            if (!parsed.GetValue(isEmpty) && (await open.Store.ListSchoolsAsync(cancel)).Count == 0)
            {
                Console.Error.WriteLine(HostWords.Say("DemoLoading"));
                await DemoLoadCommand.LoadAsync(open.Store, cancel);
            }

            await using var app = DeskServer.Of(open.Store, open.Folder, address, chosen, https, parsed.GetValue(isOpen));
            var at = await DeskServer.StartAsync(app, chosen, cancel);
            var desk = DeskServer.DeskAddress(app);
            if (!IPAddress.IsLoopback(address)) Console.Error.WriteLine(HostWords.Say(parsed.GetValue(isOpen) ? "BoundOpen" : "BoundToNetwork", address, desk));
            Answer.Say(parsed, options, HostWords.Say("Serving", desk, open.Folder.FullPath), new { address = at, desk, data = open.Folder.FullPath });
            await app.WaitForShutdownAsync(cancel);
            return 0;
        });
        return command;
    }
}
