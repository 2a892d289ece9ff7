// Starts `manchet editor` and leaves the rest to it. Without it the colours stay, and one sentence says what to install.
const { commands, window, workspace } = require("vscode");
const { LanguageClient } = require("vscode-languageclient/node");

let client;

exports.activate = async function () {
  const command = workspace.getConfiguration("manchet").get("command");
  client = new LanguageClient(
    "manchet",
    "Bread formulas",
    { command, args: ["editor"] },
    { documentSelector: [{ language: "bake" }], synchronize: { configurationSection: "manchet" } },
  );
  try {
    await client.start();
  } catch {
    client = undefined;
    const settings = "Open settings";
    const chosen = await window.showWarningMessage(
      `"${command} editor" does not start, so formulas have colours and no more. Install it with: pip install "manchet[editor]", or say in the settings where it is.`,
      settings,
    );
    if (chosen === settings) await commands.executeCommand("workbench.action.openSettings", "manchet.command");
  }
};

exports.deactivate = () => client?.stop();
