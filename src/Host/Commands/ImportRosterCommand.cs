using System.CommandLine;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records;
using Slantwise.Records.Entries;
using Slantwise.Records.Roster;
using Slantwise.Records.Schools;

namespace Slantwise.Host.Commands;

/// <summary><c>import roster FILES</c>: classes and pupils from CSV or the OneRoster set; all of it or nothing.</summary>
internal static class ImportRosterCommand
{
    public static Command Of(GlobalOptions options)
    {
        var files = new Argument<string[]>("FILES") { Description = HostWords.Say("RosterFiles"), Arity = ArgumentArity.OneOrMore };
        var isDry = new Option<bool>("--dry-run") { Description = HostWords.Say("OptionDryRun") };
        var schoolName = new Option<string?>("--school") { Description = HostWords.Say("OptionSchool"), HelpName = "NAME" };
        var command = new Command("roster", HostWords.Say("ImportRosterHelp")) { files, isDry, schoolName };
        command.SetAction(async (parsed, cancel) =>
        {
            var read = new List<RosterFile>();
            foreach (var path in parsed.GetRequiredValue(files))
                read.Add(RosterFile.Read(Path.GetFileName(path), await TextFile.ReadAsync(path, cancel)));

            var name = parsed.GetValue(schoolName);
            await using var open = name is null
                ? await OpenStore.OpenAsync(parsed, options, cancel)
                : await OpenStore.MakeAsync(parsed, options, cancel);
            var (school, isNew) = await SchoolAsync(open.Store, name, cancel);
            var plan = RosterPlan.Of(
                RosterFiles.Read(read),
                school.Id,
                await open.Store.ListClassesAsync(school.Id, cancel),
                await open.Store.ListPupilsAsync(school.Id, cancel),
                await open.Store.ListEnrolmentsAsync(school.Id, cancel),
                TimeProvider.System);
            if (!plan.CanSave) throw new Refusal(HostWords.Say("RosterRefused")) { Details = FindingLines.Of(plan.Findings.Where(f => f.IsRefused)) };

            FindingLines.Point(plan.Findings, parsed.GetValue(options.Json));
            var isSaved = !parsed.GetValue(isDry);
            if (isSaved)
            {
                if (isNew) await open.Store.SaveSchoolAsync(school, cancel);
                if (!plan.IsEmpty) await open.Store.SaveRosterAsync(school.Id, plan.Save, cancel);
            }
            Answer.Say(parsed, options, RosterPreview.Of(plan, isSaved), new
            {
                saved = isSaved,
                added = plan.Added,
                changed = plan.Changed,
                left = plan.Left,
                sameCount = plan.SameCount,
                findings = FindingLines.ToJson(plan.Findings),
            });
            return 0;
        });
        return command;
    }

    private static async Task<(School School, bool IsNew)> SchoolAsync(IStore store, string? name, CancellationToken cancel)
    {
        var schools = await store.ListSchoolsAsync(cancel);
        if (name is null) return (schools.FirstOrDefault() ?? throw Refusal.Of("NoSchoolToImport"), false);
        if (schools.FirstOrDefault(s => string.Equals(s.Name, name.Trim(), StringComparison.CurrentCultureIgnoreCase)) is { } known) return (known, false);
        if (schools.Count > 0) throw Refusal.Of("OtherSchool", schools[0].Name, name);
        if (name.Trim().Length is 0 or > 120) throw Refusal.Of("SchoolName");
        return (new School { Id = EntryId.New(TimeProvider.System), Name = name.Trim() }, true);
    }
}
