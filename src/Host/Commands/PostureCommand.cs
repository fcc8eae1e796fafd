using System.CommandLine;
using Slantwise.Engines.Mechanics;
using Slantwise.Host.Answers;
using Slantwise.Host.Postures;
using Slantwise.Host.Words;
using Slantwise.Records.Postures;

namespace Slantwise.Host.Commands;

/// <summary><c>posture</c>: what the mechanics say of a posture's file, or of one of the library.</summary>
internal static class PostureCommand
{
    public static Command Of(GlobalOptions options)
    {
        var file = new Argument<string>("FILE") { Description = HostWords.Say("ArgumentPosture") };
        var age = new Option<int?>("--age") { Description = HostWords.Say("OptionAge"), HelpName = "YEARS" };
        var sex = new Option<string?>("--sex") { Description = HostWords.Say("OptionSex") };
        sex.AcceptOnlyFromAmong("female", "male");
        var command = new Command("posture", HostWords.Say("PostureHelp")) { file, age, sex };
        command.SetAction(async (parsed, cancel) =>
        {
            if (parsed.GetValue(age) is < 5 or > 20) throw Refusal.Of("AgeRange", parsed.GetValue(age));
            var stature = new PostureStature(parsed.GetValue(age), parsed.GetValue(sex) is { } named ? Enum.Parse<Sex>(named, ignoreCase: true) : null);
            var posture = await PostureFile.ReadAsync(parsed.GetRequiredValue(file), stature.Cm ?? PostureProblemWords.UsualCm, cancel);
            var answer = new PostureAnswer(posture, stature);
            Answer.Say(parsed, options, answer.Words, answer.Json);
            return 0;
        });
        return command;
    }
}
