using System.CommandLine;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;

namespace Slantwise.Host.Commands;

/// <summary><c>list classes</c>.</summary>
internal static class ListClassesCommand
{
    public static Command Of(GlobalOptions options)
    {
        var command = new Command("classes", HostWords.Say("ListClassesHelp"));
        command.SetAction(async (parsed, cancel) =>
        {
            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            var school = await open.SchoolAsync(cancel);
            var pupils = (await open.Store.ListEnrolmentsAsync(school.Id, cancel)).Where(e => e.IsCurrent).ToLookup(e => e.ClassId);
            var rows = (await open.Store.ListClassesAsync(school.Id, cancel))
                .Select(c => new { id = c.Id, name = c.Name, pupilCount = pupils[c.Id].Count() })
                .ToList();
            var words = rows.Count == 0
                ? HostWords.Say("NoClass")
                : string.Join(Environment.NewLine, rows.Select(r => $"{r.name}\t{HostWords.SayCount("PupilCount", r.pupilCount)}"));
            Answer.Say(parsed, options, words, new { school = school.Name, classes = rows });
            return 0;
        });
        return command;
    }
}
