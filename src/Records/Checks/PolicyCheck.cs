using Slantwise.Records.Schools;

namespace Slantwise.Records.Checks;

/// <summary>Whether a school's policy and its emergency notes can be kept.</summary>
public static class PolicyCheck
{
    /// <summary>Looks at what a school allows and what it does in an emergency.</summary>
    /// <param name="school">The school as it is being edited.</param>
    /// <returns>Findings in the order of the policy's parts. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(School school)
    {
        var (policy, findings) = (school.Policy, new List<Finding>());
        // Such a policy allows nothing: kept without a word, a teacher would look in vain for the levels it promises.
        if (policy.HeadWeight == PolicyChoice.Planned && policy.HeadConditions.Count == 0) findings.Add(Finding.Refused("PolicyHeadWithoutCondition"));
        if (policy.HeadHoldCapS is < 1 or > Limits.HeadHoldCapS) findings.Add(Finding.Refused("PolicyHeadHoldCap", Limits.HeadHoldCapS));
        for (var i = 0; i < policy.ReturnSteps.Count; i++)
        {
            if (policy.ReturnSteps[i].DayCount is < 1 or > Limits.ReturnDayCount) findings.Add(Finding.Refused("PolicyReturnDays", i + 1, Limits.ReturnDayCount));
        }
        if (policy.ReturnSteps.DistinctBy(s => s.Without).Count() < policy.ReturnSteps.Count) findings.Add(Finding.Refused("PolicyReturnTwice"));
        TextCheck.Add(findings, school.EmergencyNotes, Limits.EmergencyNotesLength, "EmergencyNotesTooLong");
        return findings;
    }
}
