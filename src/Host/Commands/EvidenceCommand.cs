using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Evidence;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Host.Commands;

/// <summary><c>evidence</c>: what a lesson's entries show, or those of all lessons of a class.</summary>
internal static class EvidenceCommand
{
    public static Command Of(GlobalOptions options)
    {
        var pick = new LessonPick();
        var command = new Command("evidence", HostWords.Say("EvidenceHelp"));
        pick.AddTo(command);
        command.SetAction(async (parsed, cancel) =>
        {
            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            var school = await open.SchoolAsync(cancel);
            if (parsed.GetValue(pick.Lesson) is null && parsed.GetValue(pick.Class) is { } name)
            {
                var unit = await UnitAsync(open, school, await LessonPick.ClassAsync(name, open.Store, school, cancel), cancel);
                Answer.Say(parsed, options, EvidenceText.Of(unit), Spoken(unit, unit.Conferences));
                return 0;
            }
            var lesson = await pick.LessonAsync(parsed, open.Store, school, isWritten: true, cancel);
            var evidence = LessonEvidence.Of(await open.RecordAsync(lesson, cancel));
            Answer.Say(parsed, options, EvidenceText.Of(evidence), Spoken(evidence, evidence.Conferences));
            return 0;
        });
        return command;
    }

    private static async Task<UnitEvidence> UnitAsync(OpenStore open, School school, SchoolClass taught, CancellationToken cancel)
    {
        var records = await LessonRecord.LoadClassAsync(open.Store, school.Id, taught.Id, cancel);
        if (records.Count == 0) throw Refusal.Of("ClassWithoutLesson", taught.Name);
        return UnitEvidence.Of(records);
    }

    // Reasons and questions are keys with arguments; a reader of the file wants the sentences too.
    private static JsonObject Spoken(object evidence, IReadOnlyList<Conference> conferences)
    {
        var json = Answer.ToNode(evidence);
        foreach (var (talk, said) in conferences.Zip(json["conferences"]!.AsArray()))
        {
            said!["reason"] = talk.Reason(CultureInfo.CurrentUICulture);
            said["question"] = talk.Question(CultureInfo.CurrentUICulture);
        }
        return json;
    }
}
