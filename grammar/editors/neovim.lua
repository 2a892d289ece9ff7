-- Neovim 0.11 or newer, in ~/.config/nvim/init.lua. Colours come from the server; bake.vim, in ~/.config/nvim/syntax/, gives them without it.
vim.filetype.add({ extension = { bake = "bake" } })
vim.lsp.config("manchet", {
  cmd = { "manchet", "editor" },
  filetypes = { "bake" },
  root_markers = { "larder.bake", "kitchen.bake", ".git" },
})
vim.lsp.enable("manchet")
