using Slantwise.Desk.Pages.Policies;
using Slantwise.Records.Schools;

namespace Slantwise.Surface.Tests.Desk.Policies;

public sealed class PolicyDraftTests
{
    private static readonly School Kept = new()
    {
        Id = new Guid(1, 0, 0, new byte[8]), Name = "Brook School", EmergencyNotes = "Box by the door.",
        Policy = new() { HeadWeight = PolicyChoice.Planned, Spotting = PolicyChoice.Planned, HeadConditions = [SafetyCondition.ParentsTold], HeadHoldCapS = 4, ReturnSteps = [new(BodyDemand.Roll, 28)] },
    };

    [Fact]
    public void ToSchool_AsItWasFilledIn_ChangesNothing() => Assert.Equal(Kept, PolicyDraft.Of(Kept).ToSchool(Kept));

    [Fact]
    public void Read_AllThatAFormSends_IsThePolicy()
    {
        var school = Read(
            ("HeadWeight", ["NotAllowed"]), ("Inversion", ["NotAllowed"]), ("Rolls", ["Planned"]), ("Spotting", ["NotAllowed"]), ("Conditions", ["TeacherBeside", "MatsAround"]),
            ("HoldCap", [" 7 "]), ("ReturnInversion", ["21"]), ("ReturnRoll", [""]), ("EmergencyNotes", ["Dial 112.\r\nWait at the gate."])).ToSchool(Kept);
        Assert.Equal(
            new SafetyPolicy
            {
                HeadWeight = PolicyChoice.NotAllowed, Inversion = PolicyChoice.NotAllowed, Rolls = PolicyChoice.Planned, Spotting = PolicyChoice.NotAllowed,
                HeadConditions = [SafetyCondition.MatsAround, SafetyCondition.TeacherBeside], HeadHoldCapS = 7, ReturnSteps = [new(BodyDemand.Inversion, 21)],
            },
            school.Policy);
        Assert.Equal("Dial 112.\nWait at the gate.", school.EmergencyNotes);
        Assert.Equal(Kept.Name, school.Name);
    }

    // Source: from memory, HTML: a box that is not ticked is not sent.
    [Fact]
    public void Read_NoBoxTickedAndHeadWeightPlanned_IsFoundAndNothingTypedIsLost()
    {
        var draft = Read(("HeadWeight", ["Planned"]), ("HoldCap", ["five"]), ("ReturnRoll", ["366"]), ("ReturnImpact", ["1.5"]), ("EmergencyNotes", [new string('x', 1001)]));
        Assert.Equal(
            ["PolicyHeadWithoutCondition", "PolicyHeadHoldCap", "PolicyReturnDays", "PolicyReturnDays", "EmergencyNotesTooLong"], draft.Findings(Kept).Select(f => f.Key));
        Assert.Empty(draft.Conditions);
        Assert.Equal("five", draft.HoldCap);
        Assert.Equal([(BodyDemand.Roll, "366"), (BodyDemand.Impact, "1.5")], draft.Steps.Where(s => s.Days.Length > 0));
        Assert.Equal(1001, draft.EmergencyNotes.Length);
    }

    [Fact]
    public void Read_WhatTheFormDoesNotKnow_LeavesTheChoiceAsItWas()
    {
        var draft = Read(("HeadWeight", ["Sometimes"]), ("Conditions", ["Prayer", "9"]));
        Assert.Equal(("HeadWeight", PolicyChoice.Planned), draft.Choices[0]);
        Assert.Empty(draft.Conditions);
    }

    private static PolicyDraft Read(params (string Name, string[] Values)[] sent) =>
        PolicyDraft.Read(name => sent.FirstOrDefault(s => s.Name == name).Values ?? [], Kept);
}
